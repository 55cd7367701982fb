import { say } from '../model/say.ts';
import type { PlanContainer } from './plan-request.ts';

/** A name, rows x columns, and perhaps a block: the name and the block may hold spaces. */
const form = /^(.+?)[\s:=,]+(\d{1,3})\s*[x×*]\s*(\d{1,3})(?:[\s@,]+(.+))?$/i;
/** As trial.yaml has it. */
const name = /^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$/;

/** Containers of their own sizes, one a line, such as `T1 3x4 north`; the first line that is none is a fault. */
export function readGrids(text: string, fault: (field: 'grids', message: string) => void): PlanContainer[] {
  const lines = text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const containers: PlanContainer[] = [];
  for (const line of lines) {
    const found = readLine(line);
    if (typeof found === 'string' || containers.some(({ id }) => id === found.id)) {
      const message =
        typeof found === 'string'
          ? found
          : say('“{id}” is named twice; give each container a name of its own.', { id: found.id });
      fault('grids', message);
      return containers;
    }
    containers.push(found);
  }
  const inBlocks = containers.filter(({ block }) => block !== undefined).length;
  if (inBlocks > 0 && inBlocks < containers.length)
    fault('grids', say('Some have a block and others none; write one behind each, or behind none.'));
  return containers;
}

function readLine(line: string): PlanContainer | string {
  const [, id = '', rows, columns, block] = form.exec(line) ?? [];
  const size = { rows: Number(rows), columns: Number(columns) };
  const isSound = [size.rows, size.columns].every((each) => each >= 1 && each <= 40);
  if (!name.test(id) || !isSound || (block?.length ?? 0) > 60)
    return say(
      '“{found}” is not understood; write a name, then rows x columns from 1 to 40, then perhaps a block, such as T1 3x4 north.',
      { found: line.slice(0, 60) },
    );
  return { id, ...size, ...(block === undefined ? {} : { block: block.trim() }) };
}
