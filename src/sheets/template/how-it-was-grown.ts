import { sayCount, say } from '../../model/say.ts';
import type { TemplateWriting } from './template-writing.ts';

/** The part on how the trial was grown: its layout and dates, what was set, cut and fed. */
export function howItWasGrown({ trial, ifThere }: TemplateWriting): string[] {
  const { dates, photos = [], variables } = trial.metadata;
  const ofPots = variables[0]!.of === 'pot';
  const set = ofPots
    ? say('We set up {count} pots in all, and weighed each pot whole.', { count: '<Value of="all_pots" />' })
    : say('We set {count} plants in all.', { count: '<Value of="plants_set" />' });
  const cuts = dates?.cuts?.length ?? 0;
  const cut =
    cuts > 1
      ? sayCount(
          cuts,
          'We cut them {count} time.',
          'We cut them {count} times, first on {first} and last on {last}.',
          {
            first: '<Day of="cut" cut="1" />',
            last: '<Day of="cut" />',
          },
        )
      : say('We cut them on {day}.', { day: '<Day of="cut" />' });
  const out = say('They went into their places on {day}.', { day: '<Day of="transplanted" />' });
  const sentences = [set, out, cut].flatMap(ifThere);
  const [photo] = photos;
  return [
    ...ifThere('<Design />'),
    ...(sentences.length === 0 ? [] : [sentences.join(' ')]),
    ...(photo === undefined ? [] : ifThere(`<Photo file="${photo.file}" />`)),
    ...ifThere('<Recipe amounts="no" />'),
  ];
}
