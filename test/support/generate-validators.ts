/**
 * Compiles the schemas that the check holds folders against into src/check/generated/validators.mjs, which needs no
 * compiler where it runs: a page's policy forbids to make code of text. `npm run generate` writes it; the test
 * compares.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020, type AnySchemaObject } from 'ajv/dist/2020.js';
import { _ } from 'ajv/dist/compile/codegen/index.js';
import standalone from 'ajv/dist/standalone/index.js';
import * as formats from '../../src/check/formats.ts';

const root = new URL('../../', import.meta.url);
const names = ['trial', 'site', 'cultivars', 'sheet'] as const;

export const validatorsFile = 'src/check/generated/validators.mjs';

function schemaOf(name: string): AnySchemaObject {
  return JSON.parse(readFileSync(new URL(`schemas/${name}.schema.json`, root), 'utf8')) as AnySchemaObject;
}

/** The text of the generated module. */
export function generatedValidators(): string {
  const ajv = new Ajv2020({
    allErrors: true,
    inlineRefs: false,
    strict: true,
    strictRequired: false,
    strictTypes: false,
    formats: { date: formats.date, uri: formats.uri },
    code: { source: true, esm: true, lines: true, formats: _`formats` },
  });
  const schemas = names.map((name) => ({ name, schema: schemaOf(name) }));
  for (const { name, schema } of schemas) ajv.addSchema(schema, name);
  let code = standalone(ajv, Object.fromEntries(names.map((name) => [name, name])));
  // The schemas are not repeated: where the code looks something up in one, it reads the file.
  for (const { name, schema } of schemas) {
    code = code.replace(`= ${JSON.stringify(schema)};`, `= ${name}Schema;`);
    const parts = Object.entries((schema['$defs'] ?? {}) as Record<string, unknown>);
    for (const [part, inner] of parts) {
      code = code.replaceAll(`= ${JSON.stringify(inner)};`, `= ${name}Schema.$defs.${part};`);
    }
  }
  code = code.replace('require("ajv/dist/runtime/ucs2length").default', 'formats.lengthOf');
  if (/\brequire\(/.test(code)) throw new Error('the validators need a part of Ajv that formats.ts lacks');
  const imports = names.map(
    (name) => `import ${name}Schema from '../../../schemas/${name}.schema.json' with { type: 'json' };\n`,
  );
  const banner = '/* Generated from schemas/*.schema.json by `npm run generate`. */\n';
  const head = `${banner}${imports.join('')}import * as formats from '../formats.ts';\n`;
  return head + code.replace('"use strict";', '').trimStart();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL(validatorsFile, root), generatedValidators());
}
