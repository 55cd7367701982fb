/** Linked data read with the standards' own contexts and nothing from the network. */
import jsonld from 'jsonld';
import { DataFactory, Parser, Store, type Quad } from 'n3';
import { standardJson } from './standards.ts';

const contexts: Record<string, string> = {
  'https://schema.org/': 'schemaorg/context-30.0.jsonld',
  'https://w3id.org/ro/crate/1.2/context': 'rocrate/context-1.2.jsonld',
  'http://www.w3.org/ns/csvw': 'csvw/context.jsonld',
};

function documentLoader(url: string): Promise<{ document: object; documentUrl: string }> {
  const path = contexts[url];
  if (path === undefined) return Promise.reject(new Error(`the test has no copy of ${url}`));
  return Promise.resolve({ document: standardJson(path) as object, documentUrl: url });
}

const options = { documentLoader, safe: true, base: 'https://example.org/folder/file.json' };

/** The part of the library that is used here, as its documentation has it: its types know no `safe`. */
const library = jsonld as unknown as {
  expand(document: unknown, options: object): Promise<object[]>;
  toRDF(document: unknown, options: object): Promise<string>;
};

/** Expands JSON-LD; a key or a type that no context defines is an error. */
export const expanded = (document: unknown): Promise<object[]> => library.expand(document, options);

/** The triples of JSON-LD. */
export async function triples(document: unknown): Promise<Store> {
  const quads = await library.toRDF(document, { ...options, format: 'application/n-quads' });
  return new Store(new Parser({ format: 'N-Quads' }).parse(quads));
}

/** The triples of a Turtle document, but for imports, which would be fetched. */
export function turtle(source: string): Store {
  const imports = 'http://www.w3.org/2002/07/owl#imports';
  return new Store(new Parser().parse(source).filter((quad) => quad.predicate.value !== imports));
}

/** Every predicate and class that the triples use. */
export function terms(store: Store): string[] {
  const type = DataFactory.namedNode('http://www.w3.org/1999/02/22-rdf-syntax-ns#type');
  const predicates = store.getPredicates(null, null, null).map((term) => term.value);
  const classes = store.getQuads(null, type, null, null).map((quad: Quad) => quad.object.value);
  return [...new Set([...predicates, ...classes])];
}
