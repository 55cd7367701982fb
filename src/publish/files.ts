/** What is published: the files of each trial, and those across trials. */
export type { PublishedFile } from './published-file.ts';
export { fileFacts, type FileFacts } from './file-facts.ts';
export { datasetFacts, isWritten, provideDatasetFacts } from './dataset-facts.ts';
export { publishedFiles } from './trial-files.ts';
export { siteFiles } from './site-files.ts';
export { citationSentence } from './citation-sentence.ts';
export { datasetJsonLd, jsonForScript } from './schema-org.ts';
export { readingExamples, type ReadingExample } from './reading-examples.ts';
export { toBeComplete, type Lack } from './to-be-complete.ts';
