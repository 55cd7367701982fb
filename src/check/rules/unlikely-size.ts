import { say } from '../../model/say.ts';
import { litresIn, metresIn } from '../../model/units.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'unlikely-size',
  severity: 'warning',
  acceptable: true,
  title: 'Unlikely size of a container',
  meaning:
    'A container of these measures could hardly be handled, or holds more than its sides allow. The unit is probably another, and the yield per square metre would be wrong with it.',
  example: 'the cover of T1 is 120 x 60 m; is the unit right?',
  check,
};
export default rule;

/** Sides in m between which containers of small trials lie; common practice, no source. */
const shortest = 0.03;
const longest = 50;
/** No container of a still-water trial is deeper, in m; common practice, no source. */
const deepest = 3;

function check({ metadata }: Facts, report: Report): void {
  for (const [index, container] of (metadata.draft.containers ?? []).entries()) {
    const { id, inside, volume } = container;
    for (const name of ['cover', 'inside'] as const) {
      const size = container[name];
      if (size === undefined) continue;
      const sides = [size.length, size.width].map((side) => side * (metresIn[size.unit] ?? 1));
      if (sides.every((side) => side >= shortest && side <= longest)) continue;
      const measures = `${String(size.length)} x ${String(size.width)} ${size.unit}`;
      const message = say('the {name} of {container} is {measures}; is the unit right?', {
        name,
        container: id,
        measures,
      });
      const place = metadata.place(['containers', index, name]);
      report(rule, { file: 'trial.yaml', place, found: measures, message, where: id });
    }
    if (inside === undefined || volume === undefined) continue;
    const metres = metresIn[inside.unit] ?? 1;
    const area = inside.length * inside.width * metres * metres;
    const depth = (volume.value * (litresIn[volume.unit] ?? 1)) / 1000 / area;
    if (depth <= deepest) continue;
    const message = say('{volume} would stand {depth} m deep in {container}; is a unit wrong?', {
      volume: `${String(volume.value)} ${volume.unit}`,
      depth: depth.toFixed(1),
      container: id,
    });
    const place = metadata.place(['containers', index, 'volume']);
    report(rule, { file: 'trial.yaml', place, found: String(volume.value), message, where: id });
  }
}
