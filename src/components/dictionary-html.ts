import { say } from '../model/say.ts';
import type { DictionarySection } from '../publish/dictionary.ts';
import { escapeHtml } from './html.ts';

/** The fields of one file as a table, each with an anchor of its own. */
export function dictionaryHtml({ id, file, fields }: DictionarySection): string {
  const rows = fields.map(({ name, kind, needed, meaning, example }) => {
    const shown = example === '' ? '' : `<code>${escapeHtml(example)}</code>`;
    return (
      `<tr id="${id}-${anchor(name)}"><th scope="row"><code>${escapeHtml(name)}</code></th><td>${escapeHtml(meaning)}</td>` +
      `<td>${escapeHtml(kind)}</td><td>${needed ? say('yes') : say('no')}</td><td>${shown}</td></tr>`
    );
  });
  const head = ['Name', 'Meaning', 'Kind', 'Needed', 'Example']
    .map((each) => `<th scope="col">${say(each)}</th>`)
    .join('');
  return (
    `<div class="scroll" role="group" aria-label="${escapeHtml(say('Fields of {file}', { file }))}" tabindex="0"><table class="dictionary">` +
    `<caption><span>${escapeHtml(say('Fields of {file}', { file }))}</span></caption><thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`
  );
}

function anchor(name: string): string {
  return name.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '');
}
