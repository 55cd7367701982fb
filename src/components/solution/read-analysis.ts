import { say } from '../../model/say.ts';
import { nearestKey } from '../../compute/nutrients/named-analysis.ts';

/** What a label or a water's analysis says, by the names of `nutrient-keys.ts`, or what is wrong with it. */
export type TypedAnalysis = { analysis: Record<string, number> } | { fault: string };

/** How an analysis is to be written. */
export interface AnalysisForm {
  /** The names that it may use. */
  keys: readonly string[];
  /** Such as `N 15.5, Ca 19`. */
  example: string;
  /** No number may be larger: 100 percent. */
  most: number;
  /** True where three numbers with dashes are a grade: N, P2O5 and K2O. */
  grade: boolean;
}

/**
 * Reads names and numbers in turn: `N 15.5, Ca 19` or `N: 15.5 %; Ca = 19`. A grade may stand first (`5-11-26` is N 5,
 * P2O5 11, K2O 26). Small letters and hyphens are understood (`no3-n` is NO3_N); what is not is refused with the nearest
 * known name.
 *
 * @example readAnalysis('N 15.5, Ca 19', labelForm) // {analysis: {N: 15.5, Ca: 19}}
 */
export function readAnalysis(typed: string, form: AnalysisForm): TypedAnalysis {
  const analysis: Record<string, number> = {};
  let rest = typed.trim();
  const comma = /\d+,\d+/.exec(rest);
  if (comma)
    return {
      fault: `"${comma[0].slice(0, 40)}" ${say('has a decimal comma: write {number}', { number: comma[0].replace(',', '.') })}`,
    };
  const grade = form.grade ? /^(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)(?![\d.-])/.exec(rest) : null;
  if (grade) {
    for (const [index, key] of ['N', 'P2O5', 'K2O'].entries()) {
      const fault = put(analysis, key, Number(grade[index + 1]), form);
      if (fault !== null) return { fault };
    }
    rest = rest.slice(grade[0].length);
  }
  rest = rest.replace(/^[\s,;]+/, '');
  while (rest !== '') {
    const pair =
      /^([A-Za-z][\w-]*)(?:\s*[:=]\s*|\s+)(\d+(?:\.\d+)?)\s*(?:%|mg\/L|ppm)?(?=$|[\s,;])[\s,;]*/i.exec(rest);
    if (!pair)
      return {
        fault: say('"{text}" is not understood: write such as {example}', {
          text: firstWords(rest),
          example: form.example,
        }),
      };
    const fault = put(analysis, pair[1]!, Number(pair[2]), form);
    if (fault !== null) return { fault };
    rest = rest.slice(pair[0].length);
  }
  return { analysis };
}

/** Adds a number under its known name; the fault where it cannot. */
function put(
  analysis: Record<string, number>,
  name: string,
  value: number,
  { keys, most }: AnalysisForm,
): string | null {
  const key = keys.find((known) => plain(known) === plain(name));
  if (key === undefined) {
    const nearest = nearestKey(name, keys);
    const text = name.slice(0, 40);
    return nearest === null
      ? say('"{text}" is not known: known are {names}', { text, names: keys.join(', ') })
      : say('"{text}" is not known: did you mean {name}?', { text, name: nearest });
  }
  if (Object.hasOwn(analysis, key)) return say('{name} is written twice: leave one', { name: key });
  if (value > most) return say('{name} is {value}, which is more than {most}', { name: key, value, most });
  analysis[key] = value;
  return null;
}

function plain(name: string): string {
  return name.toLowerCase().replaceAll(/[_-]/g, '');
}

function firstWords(text: string): string {
  return text.split(/[,;]/)[0]!.slice(0, 40);
}

/** An analysis as `readAnalysis` reads it. */
export function writeAnalysis(analysis: Readonly<Record<string, number>>): string {
  return Object.entries(analysis)
    .map(([name, value]) => `${name} ${String(value)}`)
    .join(', ');
}
