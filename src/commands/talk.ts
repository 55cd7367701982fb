/** Questions and answers on a terminal, of each kind that a form has. */
import { createInterface } from 'node:readline';
import { say } from '../model/say.ts';

/** Somebody who is asked. */
export interface Talk {
  /** A line of answer; null where there will be no more. */
  ask(prompt: string): Promise<string | null>;
  tell(text: string): void;
  close(): void;
}

const ENDED = 'TANKSIDE_ANSWERS_ENDED';

/** Whether an error says that the answers ended before the questions, as at Ctrl-C. */
export function answersEnded(error: unknown): error is Error {
  return error instanceof Error && 'code' in error && error.code === ENDED;
}

/** Asks on a pair of streams. Lines that come before they are asked for are kept: pasted answers count too. */
export function talkOver(input: NodeJS.ReadableStream, output: NodeJS.WritableStream): Talk {
  const lines = createInterface({ input, output, terminal: 'isTTY' in output && output.isTTY === true });
  const answers = lines[Symbol.asyncIterator]();
  return {
    ask: async (prompt) => {
      lines.setPrompt(prompt);
      lines.prompt();
      const { value, done } = await answers.next();
      return done === true ? null : String(value);
    },
    tell: (text) => {
      output.write(`${text}\n`);
    },
    close: () => {
      lines.close();
    },
  };
}

/** What empties a field that has something in it. */
const nothing = '-';

async function answer(talk: Talk, prompt: string): Promise<string> {
  const given = await talk.ask(prompt);
  if (given === null)
    throw Object.assign(new Error(say('The answers ended before the questions; nothing was written.')), {
      code: ENDED,
    });
  return given.trim();
}

const inBrackets = (label: string, from: string): string => {
  const mark = label.endsWith('?') ? '' : ':';
  return from === '' ? `${label}${mark} ` : `${label} [${from}]${mark} `;
};

/** A line of text; an empty answer takes what stands in brackets. */
export async function askText(talk: Talk, label: string, from: string): Promise<string> {
  const given = await answer(talk, inBrackets(label, from));
  if (given === nothing) return '';
  return given === '' ? from : given;
}

/** Lines until an empty one; none at all takes what stands in brackets. */
export async function askLines(talk: Talk, label: string, from: string): Promise<string> {
  const known = from.trim().split('\n').join(', ');
  talk.tell(`${label}${known === '' ? '' : ` [${known}]`}. ${say('An empty line ends it.')}`);
  const lines: string[] = [];
  for (;;) {
    const line = await answer(talk, '> ');
    if (line === nothing) return '';
    if (line === '') return lines.length === 0 ? from : lines.join('\n');
    lines.push(line);
  }
}

const plain = (text: string): string => text.trim().normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();

/** Whether an answer is a word or its beginning, with its accents or without. */
const begins = (word: string, given: string): boolean => given !== '' && plain(word).startsWith(plain(given));

/** Whether an answer is yes, by the word, its first letter or the English one. */
export const isYes = (given: string): boolean =>
  [say('yes'), 'yes'].some((yes) => [plain(yes), plain(yes)[0]].includes(plain(given)));

/** Yes or no, by their first letters. */
export async function askYes(talk: Talk, label: string, from: boolean): Promise<boolean> {
  const [yes, no] = [say('yes'), say('no')];
  for (;;) {
    const given = await answer(talk, inBrackets(`${label} (${yes}, ${no})`, from ? yes : no));
    if (given === '') return from;
    if (begins(yes, given)) return true;
    if (begins(no, given)) return false;
    talk.tell(`  ${say('Write {yes} or {no}.', { yes, no })}`);
  }
}

interface Choice {
  value: string;
  text: string;
}

/** One of several, by its number or its words. */
export async function askChoice(
  talk: Talk,
  label: string,
  choices: readonly Choice[],
  from: string,
): Promise<string> {
  const known = Math.max(
    0,
    choices.findIndex(({ value }) => value === from),
  );
  const [only] = await askNumbers(talk, label, choices, [known], 1);
  return choices[only!]!.value;
}

/**
 * Any of several, their numbers with spaces between.
 *
 * @param none what stands in brackets where none is chosen
 */
export async function askChoices(
  talk: Talk,
  label: string,
  choices: readonly Choice[],
  from: readonly string[],
  none = '',
): Promise<string[]> {
  const known = choices.flatMap(({ value }, index) => (from.includes(value) ? [index] : []));
  const chosen = await askNumbers(talk, label, choices, known, choices.length, none);
  return chosen.map((index) => choices[index]!.value);
}

/** The indexes that were chosen. */
async function askNumbers(
  talk: Talk,
  label: string,
  choices: readonly Choice[],
  from: readonly number[],
  most: number,
  none = '',
): Promise<readonly number[]> {
  talk.tell(`${label}:`);
  choices.forEach(({ text }, index) => {
    talk.tell(`  ${String(index + 1)} ${text}`);
  });
  const prompt = most === 1 ? say('Its number') : say('Their numbers, with spaces between');
  for (;;) {
    const known = from.length === 0 ? none : from.map((index) => String(index + 1)).join(' ');
    const given = await answer(talk, inBrackets(prompt, known));
    if (given === '') return from;
    if (given === nothing && most > 1) return [];
    const named = choices.findIndex(({ text }) => text.toLowerCase() === given.toLowerCase());
    if (named >= 0) return [named];
    const numbers = given.split(/[\s,]+/).map(Number);
    const areThere = numbers.every((number) => Number.isInteger(number) && choices[number - 1] !== undefined);
    if (areThere && numbers.length <= most)
      return [...new Set(numbers)].sort((a, b) => a - b).map((number) => number - 1);
    talk.tell(
      `  ${say('“{found}” is none of them; write a number from 1 to {count}.', { found: given.slice(0, 40), count: choices.length })}`,
    );
  }
}
