import { join, relative } from 'node:path';
import type { Problem } from '../model/problem.ts';

/**
 * A problem as a workflow command, the line by which a Git host's checks set a remark beside the file. Paths are
 * from the folder that the command was started in on; what would end the line or the property is escaped.
 */
export function annotation(problem: Problem, folder: string): string {
  const level = problem.severity === 'note' ? 'notice' : problem.severity;
  const file = relative(process.cwd(), join(folder, problem.file)).replaceAll('\\', '/');
  const properties = [
    `file=${inProperty(file)}`,
    ...(problem.line === null ? [] : [`line=${problem.line}`]),
    ...(problem.column === null ? [] : [`col=${problem.column}`]),
    `title=${inProperty(problem.rule)}`,
  ];
  return `::${level} ${properties.join(',')}::${inMessage(problem.message)}`;
}

function inMessage(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function inProperty(text: string): string {
  return inMessage(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
