import { say } from '../model/say.ts';
import type { Metadata } from './facts.ts';
import type { Finding, Report, Rule } from './rule.ts';

/** What is so of several containers for one cause, told of the first with the others named. */
export function containersInOne([first, ...others]: readonly Finding[]): Finding[] {
  if (first === undefined) return [];
  if (others.length === 0) return [first];
  const containers = others.map(({ where }) => where).join(', ');
  const message = say('{message} (so too in {containers})', { message: first.message, containers });
  return [{ ...first, message, where: null }];
}

/** Reports it once, save where the grower accepts problems of the rule: each then stands by its own container. */
export function reportInOne(
  report: Report,
  rule: Rule,
  findings: readonly Finding[],
  metadata: Metadata,
): void {
  const told = isAccepted(metadata, rule.rule) ? findings : containersInOne(findings);
  for (const finding of told) report(rule, finding);
}

/** True where the grower accepts a problem of that rule. */
export function isAccepted({ draft }: Pick<Metadata, 'draft'>, rule: string): boolean {
  return (draft.accepted ?? []).some((one) => one.rule === rule);
}
