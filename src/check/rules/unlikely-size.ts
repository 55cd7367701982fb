import { say } from '../../model/say.ts';
import { litresIn, metresIn } from '../../model/units.ts';
import type { Container } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'unlikely-size',
  severity: 'warning',
  acceptable: true,
  title: 'Unlikely size of a container',
  meaning:
    'A container of these measures could hardly be handled, holds more than its sides allow, or has a cover of quite another size than its inside. The unit is probably another, and the yield per square metre would be wrong with it.',
  example: 'the cover of T1 is 120 x 60 m; is the unit right?',
  check,
};
export default rule;

/** Sides in m between which containers of small trials lie; common practice, no source. */
const shortest = 0.03;
const longest = 50;
/** No container of a still-water trial is deeper, in m; common practice, no source. */
const deepest = 3;
/** Times that the growing area and the water's area of one container may differ; common practice, no source. */
const mostTimes = 8;

function check({ metadata }: Facts, report: Report): void {
  for (const [index, container] of (metadata.draft.containers ?? []).entries()) {
    const { id, cover, inside, volume } = container;
    let isOdd = false;
    for (const name of ['cover', 'inside'] as const) {
      const size = container[name];
      if (size === undefined) continue;
      const sides = [size.length, size.width].map((side) => side * (metresIn[size.unit] ?? 1));
      if (sides.every((side) => side >= shortest && side <= longest)) continue;
      const measures = measuresOf(size);
      const message = say('the {name} of {container} is {measures}; is the unit right?', {
        name,
        container: id,
        measures,
      });
      const place = metadata.place(['containers', index, name]);
      report(rule, { file: 'trial.yaml', place, found: measures, message, where: id });
      isOdd = true;
    }
    if (!isOdd && cover !== undefined && inside !== undefined) {
      const times = areaOf(cover) / areaOf(inside);
      if (times > mostTimes || times < 1 / mostTimes) {
        const measures = measuresOf(cover);
        const message = say(
          'the cover of {container} is {cover} and its inside {inside}, areas that differ {times}-fold; is a unit or a digit wrong?',
          {
            container: id,
            cover: measures,
            inside: measuresOf(inside),
            times: Math.round(Math.max(times, 1 / times)),
          },
        );
        const place = metadata.place(['containers', index, 'cover']);
        report(rule, { file: 'trial.yaml', place, found: measures, message, where: id });
      }
    }
    if (inside === undefined || volume === undefined) continue;
    const depth = fullDepth({ inside, volume });
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

type Size = NonNullable<Container['cover']>;

const measuresOf = ({ length, width, unit }: Size): string => `${String(length)} x ${String(width)} ${unit}`;

/** In m2. */
export const areaOf = ({ length, width, unit }: Size): number => length * width * (metresIn[unit] ?? 1) ** 2;

/** How deep a container's volume stands in it, in m. */
export const fullDepth = ({ inside, volume }: Required<Pick<Container, 'inside' | 'volume'>>): number =>
  (volume.value * (litresIn[volume.unit] ?? 1)) / 1000 / areaOf(inside);
