import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

/** Files whose sentences are English in every language, or are not for the terminal of a grower. */
const allowed: Readonly<Record<string, string>> = {
  'usage.ts': 'the reference of the commands',
  'test.ts': 'for those who work on the program',
  'bench.ts': 'for those who work on the program',
  'tools.ts': 'for those who work on the program',
  'vitest-tally.ts': 'for those who work on the program',
  'browser.ts': 'the browser of the tests',
  'static-server.ts': 'answers to a browser',
  'library-of.ts': 'the title of a site without one',
  'make-search.ts': 'the description of a published file',
  'write-all.ts': 'a fault of the program',
};

/** What is typed as it stands, a state that a program reads, words of Node, and a script for the browser that prints. */
const noSentence = /^(?:D=fresh_weight in oz|dates day first|as it was|\. To specify |\(async [^]*)$/;

/** Wrong uses that come with the English usage before any content is read. */
const withUsage = ['check.ts', 'folder-argument.ts', 'folders.ts', 'print.ts', 'serve.ts', 'tankside.ts'];

test('the commands have no sentence that is not a message, but for those known', () => {
  const folder = join(import.meta.dirname, '..', '..', 'src', 'commands');
  const left = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && allowed[name] === undefined)
    .flatMap((name) => sentencesOf(readFileSync(join(folder, name), 'utf8'), withUsage.includes(name)))
    .filter((text) => !noSentence.test(text));
  expect(left).toEqual([]);
});

/** Texts of three words or more that are not handed to say; of a wrong use too, unless it may be English. */
function sentencesOf(source: string, isUsageAllowed: boolean): string[] {
  const passed = ['say', 'sayCount', ...(isUsageAllowed ? ['wrongUse'] : [])];
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const calls =
      ts.isCallExpression(node) && ts.isIdentifier(node.expression) && passed.includes(node.expression.text);
    if (calls) return;
    const isText =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (isText && /[a-z]{2,}(?: [a-z]{2,}){2}|[A-Z][a-z]+ [a-z]+/.test(node.text)) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('a.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}
