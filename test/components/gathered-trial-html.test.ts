import { expect, test } from 'vitest';
import { gatheredTrialHtml } from '../../src/components/gathered-trial-html.ts';
import { gatheredTrials } from '../../src/publish/gathered-trials.ts';
import { withGathered } from '../publish/example.ts';

const [trial] = gatheredTrials(withGathered);

test('a trial of another site is credited, licensed, dated, and led to where it is published', () => {
  expect(gatheredTrialHtml(trial!).replace(/\s/g, ' ')).toBe(
    '<a href="https://otterbrook.example.org/trials/no-option-2024/" rel="external">One tray</a>, ' +
      'summer 2024: Tam Brackwell, version 1.0.0, ' +
      '<a href="https://creativecommons.org/publicdomain/zero/1.0/" rel="license">CC0-1.0</a>, ' +
      '<a href="https://otterbrook.example.org/" rel="external">Otterbrook</a>, gathered 25 November 2026',
  );
});

test('what a stranger wrote cannot end its place in the page', () => {
  const nasty = '"><script>alert(1)</script>';
  const html = gatheredTrialHtml({
    ...trial!,
    title: nasty,
    creators: [nasty],
    origin: { ...trial!.origin, title: nasty, page: `https://example.org/${nasty}` },
  });
  expect(html).not.toContain('<script');
  expect(html.match(/<a href="[^"]*" rel="[a-z]+">/g)).toHaveLength(3);
});
