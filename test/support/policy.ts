/** Holds a surveyed page's head against what the design says of its Content-Security-Policy. */
import { createHash } from 'node:crypto';
import type { SurveyedPage } from './survey.ts';

/** Types that a browser runs; others, such as application/ld+json, are data. */
const runs = new Set(['', 'text/javascript', 'application/javascript', 'module']);

/** One line for each way in which the page's policy is missing, misplaced, too weak or broken. */
export function policyFaults(page: SurveyedPage): string[] {
  const faults: string[] = [];
  if (!/^<meta charset="?utf-8/i.test(page.head[0] ?? ''))
    faults.push('the head does not begin with its charset');
  if (!/^<meta [^>]*Content-Security-Policy/i.test(page.head[1] ?? '')) {
    faults.push('the policy does not follow the charset');
  }
  if (page.policy === undefined) return [...faults, 'there is no policy'];
  const directives = directivesOf(page.policy);
  const wanted = { 'default-src': "'self'", 'object-src': "'none'", 'base-uri': "'self'" };
  for (const [name, value] of Object.entries(wanted)) {
    const found = directives.get(name)?.join(' ');
    if (found !== value) faults.push(`${name} is ${found ?? 'not set'}, not ${value}`);
  }
  const scripts = directives.get('script-src') ?? directives.get('default-src') ?? [];
  const weak = scripts.filter(
    (source) => source !== "'self'" && !/^'sha(256|384|512)-[\w+/=]+'$/.test(source),
  );
  if (weak.length > 0) faults.push(`scripts are allowed by ${weak.join(' ')}`);
  for (const { inline, type } of page.scripts) {
    if (inline === undefined || !runs.has(type)) continue;
    const hashes = ['sha256', 'sha384', 'sha512'].map((algorithm) => {
      return `'${algorithm}-${createHash(algorithm).update(inline).digest('base64')}'`;
    });
    if (!hashes.some((hash) => scripts.includes(hash))) {
      faults.push(`an inline script has no hash in the policy: ${inline.trim().slice(0, 60)}`);
    }
  }
  return [...faults, ...page.handlers.map((handler) => `script in an attribute: ${handler}`)];
}

function directivesOf(policy: string): Map<string, string[]> {
  const parts = policy.split(';').map((part) => part.trim().split(/\s+/));
  return new Map(parts.map(([name = '', ...values]) => [name, values]));
}
