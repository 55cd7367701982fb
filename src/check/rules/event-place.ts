import { say } from '../../model/say.ts';
import type { Container } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'event-place',
  severity: 'warning',
  acceptable: true,
  title: 'Event or photograph of an unknown place',
  meaning:
    'The place of an event or a photograph is a container of trial.yaml, or a container, rows and columns; here it is off the grid, a range that runs backwards, or almost a container.',
  example: 'events[2].where is "T22 1 3", but there is no T22; did you mean "T2"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  if (metadata.lost.has('containers')) return;
  const containers = metadata.draft.containers ?? [];
  for (const list of ['events', 'photos'] as const) {
    for (const [index, { where }] of (metadata.draft[list] ?? []).entries()) {
      const fault = where === undefined ? null : faultOf(where, containers);
      if (where === undefined || fault === null) continue;
      const key = `${list}[${String(index + 1)}].where`;
      const message = say('{key} is {where}, but {fault}', { key, where: showText(where), fault });
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place([list, index, 'where']),
        found: where,
        message,
      });
    }
  }
}

function faultOf(where: string, containers: readonly Container[]): string | null {
  const container = containers.find(
    ({ id }) => where === id || where.startsWith(`${id} `) || where.startsWith(`${id},`),
  );
  if (container !== undefined) {
    const [, rows, columns] =
      /^[\s,]*(\d+(?:-\d+)?)[\s,]+(\d+(?:-\d+)?)$/.exec(where.slice(container.id.length)) ?? [];
    const isBeyond = (text: string | undefined, size: number): boolean =>
      text !== undefined && text.split('-').some((one) => Number(one) < 1 || Number(one) > size);
    const isOff = isBeyond(rows, container.rows) || isBeyond(columns, container.columns);
    const backwards = [rows, columns].find((text) => {
      const [from = '', to = from] = text?.split('-') ?? [];
      return Number(from) > Number(to);
    });
    if (!isOff && backwards === undefined) return null;
    if (!isOff)
      return say('{found} runs backwards; write {range}', {
        found: backwards!,
        range: backwards!.split('-').toReversed().join('-'),
      });
    const size = { rows: container.rows, columns: container.columns };
    return say('{container} has {rows} rows and {columns} columns', { container: container.id, ...size });
  }
  const [first = ''] = where.split(/[\s,;]+/);
  const best = nearest(
    first,
    containers.map(({ id }) => id),
  );
  // A place in words ("all tanks", "the inlet") is no slip.
  if (!/\d/.test(first)) return null;
  // What is formed as the containers' names are is meant as one.
  if (best === null)
    return containers.some(({ id }) => formOf(id) === formOf(first))
      ? say('there is no {name}; containers: {names}', {
          name: first,
          names: containers.map(({ id }) => id).join(', '),
        })
      : null;
  return say('there is no {name}; did you mean "{near}"?', { name: first, near: best });
}

/** A name with its letters and digits made alike: T12 is formed as T7 is. */
const formOf = (name: string): string => name.replaceAll(/\p{L}+/gu, 'a').replaceAll(/\d+/g, '1');
