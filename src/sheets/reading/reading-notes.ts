import { collector } from '../../check/collect.ts';
import sheetLongSentence from '../../check/rules/sheet-long-sentence.ts';
import sheetReadingGrade from '../../check/rules/sheet-reading-grade.ts';
import type { Problem } from '../../model/problem.ts';
import { say } from '../../model/say.ts';
import type { SheetPage } from '../../publish/sheet-pages.ts';
import type { Sentence } from '../prose/passage.ts';
import { passagesOf } from '../prose/passages-of.ts';
import { sentencesOf } from '../prose/sentences-of.ts';
import { readingGrade, wordsOf } from './reading-grade.ts';

/** The school grade that a sheet should not be above. */
export const aimedGrade = 8;
/** More words than this make a sentence a long one. */
export const mostWords = 25;

/** Notes to a sheet's author: that it reads harder than it should, and which sentences are long. */
export function readingNotes({ sheet, language }: SheetPage): Problem[] {
  const { report, problems } = collector('');
  const sentences = runningText(sheet.blocks);
  const grade = /^en(?:-|$)/i.test(language) ? readingGrade(sentences) : null;
  if (grade !== null && Math.round(grade) > aimedGrade) {
    report(sheetReadingGrade, {
      file: sheet.file,
      found: grade.toFixed(1),
      expected: String(aimedGrade),
      message: say('reads at grade {grade}; aim at {aim} or lower: shorter sentences, shorter words', {
        grade: grade.toFixed(1),
        aim: aimedGrade,
      }),
    });
  }
  for (const sentence of sentences) {
    const count = wordsOf(sentence.text).length;
    if (count <= mostWords) continue;
    report(sheetLongSentence, {
      file: sheet.file,
      place: sentence.place(0),
      found: String(count),
      expected: String(mostWords),
      message: say(
        'this sentence has {count} words; one of {most} or fewer is easier to follow: make it two',
        { count, most: mostWords },
      ),
    });
  }
  return problems;
}

/** Paragraphs and points; headings and tables are no sentences. */
export function runningText(blocks: SheetPage['sheet']['blocks']): Sentence[] {
  return passagesOf(blocks)
    .filter(({ kind }) => kind === 'text')
    .flatMap(sentencesOf);
}
