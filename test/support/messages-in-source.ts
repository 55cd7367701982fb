/** The messages that the source says, read off its syntax. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** Functions whose arguments that are plain text are messages. */
const saying = new Set(['say', 'sayCount', 'sayHtml', 'tell', 'pattern', 'describedAs']);
const named = /\{[a-z]\w*\}/i;

/** A message, and the file that says it. */
export interface SourceMessage {
  text: string;
  file: string;
}

/** Every plain text that is handed to say, sayCount, tell or pattern, and every other that names a value in braces. */
export function messagesInSource(folder: string): SourceMessage[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|astro)$/.test(name) && !name.includes('generated'))
    .sort()
    .flatMap((name) => messagesOf(readFileSync(join(folder, name), 'utf8'), name));
}

/** The messages of one file; of a page, those of its expressions too. */
export function messagesOf(text: string, file: string): SourceMessage[] {
  const source = ts.createSourceFile(`${file}.tsx`, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: SourceMessage[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && saying.has(node.expression.text)) {
      for (const argument of node.arguments) {
        for (const each of textsOf(argument)) found.push({ text: each, file });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The texts that an argument can be. */
function textsOf(node: ts.Expression): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isConditionalExpression(node)) return [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)];
  if (ts.isParenthesizedExpression(node)) return textsOf(node.expression);
  return [];
}

/** The names in braces of a message, in alphabetical order. */
export function namesIn(message: string): string[] {
  return [...message.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();
}

/** Whether a text names a value in braces. */
export const namesAValue = (text: string): boolean => named.test(text);
