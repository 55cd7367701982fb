import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { contentPolicy, unitsScript } from '../../src/layouts/content-policy.ts';

test('the built pages allow nothing inline but the one script that the policy names by its hash', () => {
  const policy = contentPolicy(false);
  expect(policy).not.toContain('unsafe');
  expect(policy).toContain(`'sha256-${createHash('sha256').update(unitsScript).digest('base64')}'`);
  expect(policy).toMatch(/^default-src 'self';/);
  expect(policy).toContain("object-src 'none'");
  expect(policy).toContain("base-uri 'self'");
});
