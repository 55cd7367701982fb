/** The media types of the files that a site holds, by their name's ending. */
const types: Record<string, string> = {
  '.bib': 'application/x-bibtex; charset=utf-8',
  '.cff': 'application/yaml; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.gif': 'image/gif',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpeg': 'image/jpeg',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.jsonld': 'application/ld+json; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.mdx': 'text/markdown; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.parquet': 'application/vnd.apache.parquet',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.r': 'text/plain; charset=utf-8',
  '.ris': 'application/x-research-info-systems; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.tsv': 'text/tab-separated-values; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.xml': 'application/xml; charset=utf-8',
  '.yaml': 'application/yaml; charset=utf-8',
  '.yml': 'application/yaml; charset=utf-8',
  '.zip': 'application/zip',
};

/** The media type for an ending such as `.csv`; SHA256SUMS and the like, without one, are plain text. */
export function mediaType(ending: string): string {
  if (ending === '') return 'text/plain; charset=utf-8';
  return types[ending.toLowerCase()] ?? 'application/octet-stream';
}
