import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { mdxExpressionFromMarkdown } from 'mdast-util-mdx-expression';
import { mdxJsxFromMarkdown } from 'mdast-util-mdx-jsx';
import { gfmTable } from 'micromark-extension-gfm-table';
import { mdxExpression } from 'micromark-extension-mdx-expression';
import { mdxJsx } from 'micromark-extension-mdx-jsx';

export type MarkdownRoot = ReturnType<typeof fromMarkdown>;
export type MarkdownNode = MarkdownRoot['children'][number];

/** What MDX takes out of Markdown: HTML, addresses in angle brackets, and code told by its indentation. */
const takenOut = { disable: { null: ['autolink', 'codeIndented', 'htmlFlow', 'htmlText'] } };

/**
 * Markdown with tables, components and (to find them) expressions, as a tree of plain data. No parser of a
 * programming language is given to the extensions: what stands between braces is told by its braces alone.
 * Throws where the syntax is broken.
 */
export function parseMarkdown(text: string): MarkdownRoot {
  return fromMarkdown(text, {
    extensions: [mdxJsx(), mdxExpression(), takenOut, gfmTable()],
    mdastExtensions: [mdxJsxFromMarkdown(), mdxExpressionFromMarkdown(), gfmTableFromMarkdown()],
  });
}
