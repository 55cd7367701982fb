import type { Passage, Sentence } from './passage.ts';

/** Shortened words whose full stop ends no sentence, in English and Spanish. */
const shortened =
  /(?:^|[\s(])(?:e\.g|i\.e|vs|no|nos|cf|ca|approx|dr|mr|mrs|st|fig|p\.ej|ej|núm|sr|sra|aprox)$/iu;

/**
 * The sentences of a passage. A row of a table is one, since its cells speak of one thing.
 *
 * @example sentencesOf of "It gave 4.2 oz. We ate it." are two
 */
export function sentencesOf(passage: Passage): Sentence[] {
  if (passage.kind === 'row') return [sentence(passage, 0, passage.text.length)];
  const found: Sentence[] = [];
  let from = 0;
  for (const { index, 0: mark } of passage.text.matchAll(/[.!?…]+["'”’»)\]]*(?=\s|$)/gu)) {
    const before = passage.text.slice(from, index);
    const after = passage.text.slice(index + mark.length).trimStart();
    // A small letter behind a full stop goes on with the sentence.
    if (mark.startsWith('.') && (shortened.test(before) || /^\p{Ll}/u.test(after))) continue;
    found.push(sentence(passage, from, index + mark.length));
    from = index + mark.length;
  }
  if (passage.text.slice(from).trim() !== '') found.push(sentence(passage, from, passage.text.length));
  return found;
}

function sentence(passage: Passage, start: number, to: number): Sentence {
  const from = start + (/^\s*/.exec(passage.text.slice(start, to))?.[0].length ?? 0);
  return {
    passage,
    text: passage.text.slice(from, to),
    index: from,
    components: passage.components
      .filter(({ index }) => index >= from && index < to)
      .map((each) => ({ ...each, index: each.index - from })),
    place: (index) => passage.place(from + index),
  };
}
