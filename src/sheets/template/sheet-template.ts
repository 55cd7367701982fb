import type { Findings } from '../../model/findings.ts';
import type { Library, TrialWithFindings } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { escapeText } from './escape-text.ts';
import { howItWasGrown } from './how-it-was-grown.ts';
import { templateWriting } from './template-writing.ts';
import { whatThisDoesNotShow } from './what-this-does-not-show.ts';
import { whatWeFound } from './what-we-found.ts';

/**
 * A first fact sheet of a finished trial, in the language being written: plain words round components, so that
 * each number in it comes from the findings. Its author goes on from there.
 */
export function sheetTemplate(own: TrialWithFindings & { findings: Findings }, library: Library): string {
  const writing = templateWriting(own, library);
  const { id, metadata } = own.trial;
  const parts: [string, readonly string[]][] = [
    [say('The bottom line'), ['<Finding />']],
    [say('What we asked'), [`> ${escapeText(metadata.question)}`]],
    [say('How we grew it'), howItWasGrown(writing)],
    [say('What we found'), whatWeFound(writing)],
    [say('What this does not show'), whatThisDoesNotShow(writing)],
    [say('Cautions'), writing.ifThere('<Cautions />')],
    [
      say('Data and citation'),
      [
        say(
          'Each weight, and how each number comes from the weights, is on [the page of the trial]({page}).',
          {
            page: `/trials/${id}/`,
          },
        ),
        ...writing.ifThere('<Citation />'),
      ],
    ],
  ];
  const written = parts
    .filter(([, blocks]) => blocks.length > 0)
    .map(([heading, blocks]) => [`## ${heading}`, ...blocks].join('\n\n'));
  return `${written.join('\n\n')}\n`;
}
