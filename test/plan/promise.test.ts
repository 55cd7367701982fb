/** A plan is a promise: it is frozen as it is made, and what is done otherwise is found once the trial is finished. */
import { describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { planKept } from '../../src/compute/planning/plan-kept.ts';
import { plannedAnalysis } from '../../src/compute/planning/planned-analysis.ts';
import { plannedMethod } from '../../src/compute/planning/planned-method.ts';
import { proposals } from '../../src/plan/proposals.ts';
import { openTrial } from '../../src/weigh/open-trial.ts';
import { editedTrial, trialEdits } from '../../src/weigh/trial-edits.ts';
import { weighState } from '../../src/weigh/weigh-state.ts';
import { containers, levels, planOf } from './request.ts';

const context = { cultivars: null, others: [], today: '2026-11-25', variation: 12 };
const request = planOf({
  factors: [{ id: 'feed', name: 'Feed', levels: levels('one', 'two', 'three'), check: 'one' }],
  containers: containers(2, 1, 3),
});
const [plan] = proposals(request, 8812, context).proposals;
const encode = (text: string) => new TextEncoder().encode(text);
const planned = new Map([...plan!.files].map(([name, text]) => [name, encode(text)]));
const later = { cultivars: null, today: '2027-06-01', prefix: '' };

/** The folder as the page for weighing in leaves it, with the status and the first release ticked. */
function finished(layout = plan!.files.get('layout.csv')!): Map<string, Uint8Array> {
  const yaml = plan!.files.get('trial.yaml')!;
  const opened = openTrial({ name: 'planned-trial', files: planned }).opened!;
  const edits = trialEdits(weighState(opened, []), '2027-05-22');
  expect(edits.release).toEqual({ version: '1.0.0', date: '2027-05-22', note: 'First release.' });
  const edited = editedTrial(yaml, plan!.trial.metadata, { ...edits, cuts: ['2027-05-20'] });
  const harvest = plan!.files.get('harvest.csv')!.replace(/,,,$/gm, ',141,,');
  return new Map([
    ...planned,
    ['trial.yaml', encode(edited)],
    ['layout.csv', encode(layout)],
    ['harvest.csv', encode(harvest)],
  ]);
}

describe('A plan', () => {
  test('is dated, and frozen with the sums of its files', () => {
    expect(plan!.trial.metadata.releases).toEqual([
      { version: '0.1.0', date: '2026-11-25', note: 'The plan.' },
    ]);
    for (const name of ['trial.yaml', 'layout.csv', 'harvest.csv'])
      expect(plan!.files.get(`versions/0.1.0/${name}`)).toBe(plan!.files.get(name));
    expect(checkTrial('planned-trial', planned, { ...later, today: context.today }).problems).toEqual([]);
    const spoilt = new Map(planned).set('versions/0.1.0/layout.csv', encode('container,row,column,feed\n'));
    expect(checkTrial('planned-trial', spoilt, later).problems.map(({ severity }) => severity)).toContain(
      'error',
    );
  });

  test('may be bettered, and grow, without a word from the check', () => {
    const yaml = plan!.files.get('trial.yaml')!;
    for (const status of ['planned', 'growing']) {
      const changed = yaml
        .replace('status: planned', `status: ${status}`)
        .replace(/^title:.*$/m, 'title: Bettered');
      const files = new Map(planned).set('trial.yaml', encode(changed));
      expect(checkTrial('planned-trial', files, later).problems).toEqual([]);
    }
  });

  test('that was kept to is told as kept to', () => {
    const { trial, problems } = checkTrial('planned-trial', finished(), later);
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(planKept(trial!)).toEqual({ version: '0.1.0', changes: [] });
  });

  test('that was not kept to is told with what was done otherwise', () => {
    const layout = plan!.files.get('layout.csv')!;
    const [head, first, second, ...rest] = layout.split('\n');
    const [a, b] = [first!.split(',').at(-1)!, second!.split(',').at(-1)!];
    const swapped = [head, first!.replace(a, b), second!.replace(b, a), ...rest].join('\n');
    const { trial } = checkTrial(
      'planned-trial',
      new Map(finished(swapped)).set(
        'trial.yaml',
        encode(new TextDecoder().decode(finished().get('trial.yaml')).replace(', lot: {method: lots-1}', '')),
      ),
      later,
    );
    expect(planKept(trial!)?.changes.map(({ file, before, after }) => [file, before, after])).toEqual([
      ['layout.csv', a, b],
      ['layout.csv', b, a],
    ]);
  });

  test('says by which model and methods it will be analysed', () => {
    const analysis = plannedAnalysis(plan!.trial, [], 12)!;
    const [model, compared] = plannedMethod(plan!.trial, analysis);
    expect(model).toContain('fresh weight per plant set = block + feed, with error between positions');
    expect(compared).toContain('each with the check by Dunnett’s');
  });
});
