/** An element of a tagged PDF's structure, as read from the file's own objects (ISO 32000-1, 14.7 and 14.8). */
export interface StructureElement {
  /** H1, P, Figure, Table and so on. */
  type: string;
  /** Its alternative description; null where it has none. */
  alt: string | null;
  /** The objects of the pages that it and all within it stand on. */
  pages: ReadonlySet<string>;
}

export interface PdfStructure {
  pages: number;
  marked: boolean;
  language: string | null;
  title: string | null;
  elements: readonly StructureElement[];
  /** The addresses that links lead to. */
  links: readonly string[];
}

/** Reads the objects of a PDF that are not packed, among which its structure is. */
export function pdfStructure(pdf: Buffer): PdfStructure {
  const text = pdf.toString('latin1');
  const objects = new Map(
    [...text.matchAll(/^(\d+) 0 obj\s([\s\S]*?)\sendobj/gm)].map(([, id = '', body = '']) => [id, body]),
  );
  const elements = [...objects].filter(([, body]) => /\/Type \/StructElem\b/.test(body));
  const pagesOf = (id: string, seen: Set<string>): string[] => {
    const body = objects.get(id) ?? '';
    if (seen.has(id) || !body.includes('/Type /StructElem')) return [];
    seen.add(id);
    const own = [...body.matchAll(/\/Pg (\d+) 0 R/g)].map(([, page = '']) => page);
    const kids = /\/K (?:(\d+) 0 R|\[([^\]]*)\])/.exec(body);
    const ids = [...`${kids?.[1] ?? ''} 0 R ${kids?.[2] ?? ''}`.matchAll(/(\d+) 0 R/g)].map(
      ([, kid = '']) => kid,
    );
    return [...own, ...ids.flatMap((kid) => pagesOf(kid, seen))];
  };
  return {
    pages: [...objects.values()].filter((body) => /\/Type \/Page\b/.test(body)).length,
    marked: /\/MarkInfo <<[^>]*\/Marked true/.test(text) && text.includes('/StructTreeRoot '),
    language: /\/Lang \(([^)]*)\)/.exec(text)?.[1] ?? null,
    title: stringAt(/\/Title (\((?:[^()\\]|\\.)*\)|<[0-9A-F]+>)/.exec(text)?.[1]),
    elements: elements.map(([id, body]) => ({
      type: /\/S \/(\w+)/.exec(body)?.[1] ?? '',
      alt: stringAt(/\/Alt (\((?:[^()\\]|\\.)*\)|<[0-9A-F]+>)/.exec(body)?.[1]),
      pages: new Set(pagesOf(id, new Set())),
    })),
    links: [...text.matchAll(/\/URI \(([^)]*)\)/g)].map(([, to = '']) => to),
  };
}

function stringAt(written: string | undefined): string | null {
  if (written === undefined) return null;
  if (written.startsWith('(')) return written.slice(1, -1).replaceAll(/\\(.)/g, '$1');
  const bytes = Buffer.from(written.slice(1, -1), 'hex');
  // With its byte order mark, text is UTF-16.
  return bytes[0] === 0xfe ? bytes.subarray(2).swap16().toString('utf16le') : bytes.toString('latin1');
}
