import { say } from '../model/say.ts';
import type { Finding } from './rule.ts';

/** What is so of several containers for one cause, told of the first with the others named. */
export function containersInOne([first, ...others]: readonly Finding[]): Finding[] {
  if (first === undefined) return [];
  if (others.length === 0) return [first];
  const containers = others.map(({ where }) => where).join(', ');
  const message = say('{message} (so too in {containers})', { message: first.message, containers });
  return [{ ...first, message, where: null }];
}
