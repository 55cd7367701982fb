import { showText } from '../check/show-value.ts';
import type { Findings } from '../model/findings.ts';
import type { TrialWithFindings } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import type { Asked, ComponentAttribute } from './component.ts';
import { refuseMissing, refuseName, refuseNoValue } from './refuse.ts';

export const trialAttribute: ComponentAttribute = {
  name: 'trial',
  meaning:
    'The trial, by the name of its folder. Left out in the fact sheet of a trial, which speaks of its own; needed in one across trials.',
};

/** The trial that a component asks for; null where there is none such, which is reported unless its own errors say so. */
export function askedTrial(asked: Asked): TrialWithFindings | null {
  const { own, library, trials, faulty, alone } = asked;
  const id = asked.attribute('trial') ?? own?.trial.id ?? (trials.length === 1 ? trials[0]! : null);
  if (id === null) {
    return refuseMissing(
      asked,
      'trial',
      say('{component} needs the attribute trial in a sheet across trials, such as trial="{trial}"', {
        component: asked.component.name,
        trial: trials[0] ?? '',
      }),
    );
  }
  const item = library.trials.find(({ trial }) => trial.id === id);
  if (item === undefined) {
    // Trials listed at the top of the sheet are reported there, once.
    if (faulty.has(id) || alone || (asked.attribute('trial') === null && own === null)) return null;
    const fault = say('there is no trial {name}', { name: showText(id) });
    return refuseName(asked, 'trial', fault, id, knownTrials(asked));
  }
  if (own === null && !trials.includes(id)) {
    // A name at the top that there is not may be this one misspelt, and is reported there.
    if (trials.some((each) => !knownTrials(asked).includes(each))) return null;
    const fault = say('the trials at the top of the sheet do not name {name}', { name: showText(id) });
    return refuseName(asked, 'trial', fault, id, trials);
  }
  return item;
}

export function knownTrials({ library }: Pick<Asked, 'library'>): string[] {
  return library.trials.map(({ trial }) => trial.id).sort();
}

/** A trial with its findings. */
export interface Found {
  trial: Trial;
  findings: Findings;
}

/** The trial that a component asks for, with its findings; null where it is not finished. */
export function askedFindings(asked: Asked): Found | null {
  const item = askedTrial(asked);
  if (item === null) return null;
  const { trial, findings } = item;
  if (findings !== null) return { trial, findings };
  return refuseNoValue(
    asked,
    'trial',
    say('the trial is {status}, so that nothing was found yet', { status: say(trial.metadata.status) }),
  );
}
