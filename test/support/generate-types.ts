/**
 * Writes src/model/generated/*.ts from schemas/*.schema.json, so that the schemas stay the single
 * source of the types. `npm run generate` writes; the test beside this compares.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compile } from 'json-schema-to-typescript';

const root = new URL('../../', import.meta.url);

/**
 * A schema's conditions say nothing that a type can hold, and words beside a $ref would make a second
 * type of the same thing: both are left out.
 */
function forTypes(key: string, value: unknown): unknown {
  if (key === 'allOf') return undefined;
  if (typeof value === 'object' && value !== null && '$ref' in value) return { $ref: value.$ref };
  return value;
}

/** Each generated file's path (relative to the project) and its text. */
export async function generatedTypes(): Promise<Map<string, string>> {
  const files = new Map<string, string>();
  const names = readdirSync(new URL('schemas/', root)).filter((name) => name.endsWith('.schema.json'));
  for (const name of names.sort()) {
    const source = readFileSync(new URL(`schemas/${name}`, root), 'utf8');
    const schema = JSON.parse(source, forTypes) as Parameters<typeof compile>[0];
    const text = await compile(schema, name, {
      bannerComment: `/* Generated from schemas/${name} by \`npm run generate\`. */`,
      additionalProperties: false,
      format: true,
      style: { singleQuote: true, printWidth: 110 },
    });
    files.set(`src/model/generated/${name.replace('.schema.json', '.ts')}`, text);
  }
  return files;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [path, text] of await generatedTypes()) writeFileSync(new URL(path, root), text);
}
