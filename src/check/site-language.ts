import { type Language, languageOf } from '../model/language.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { readYaml } from '../read/yaml.ts';
import { isMapping } from './read-metadata.ts';

/**
 * The language that a site.yaml asks for, in which its own faults are told as well: it is read whatever else is wrong
 * with the file. English where there is none, or none of ours is asked for.
 */
export function siteLanguage(bytes: Uint8Array | null): Language {
  if (bytes === null) return 'en';
  const { value } = readYaml(decodeUtf8(bytes).text ?? '');
  const tag = isMapping(value) ? value['language'] : lineOfLanguage(bytes);
  return typeof tag === 'string' ? languageOf(tag) : 'en';
}

/** What the line of the language says in a file that is no YAML, or no UTF-8. */
function lineOfLanguage(bytes: Uint8Array): string | undefined {
  return /^language:[ \t]*["']?([a-z-]+)/im.exec(new TextDecoder().decode(bytes))?.[1];
}
