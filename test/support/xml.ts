/** One element of a parsed drawing; text stands in `text`, in order with the children's own. */
export interface XmlElement {
  name: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly XmlElement[];
  /** All text within, entities resolved. */
  text: string;
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** Resolves entities; throws where a bare ampersand or an unknown entity stands. */
function resolve(text: string): string {
  return text.replace(/&([^;]*;?)/g, (_, body: string) => {
    const name = body.slice(0, -1);
    if (!body.endsWith(';')) throw new Error(`a bare ampersand before "${body.slice(0, 20)}"`);
    if (name.startsWith('#')) return String.fromCodePoint(Number(name.slice(1)));
    const known = entities[name];
    if (known === undefined) throw new Error(`unknown entity &${name};`);
    return known;
  });
}

const forbidden = (text: string) =>
  [...text].some((letter) => {
    const code = letter.codePointAt(0)!;
    return (
      (code < 32 && ![9, 10, 13].includes(code)) || (code >= 0xd800 && code <= 0xdfff) || code === 0xfffe
    );
  });

/**
 * Parses a strict subset of XML 1.0: elements, attributes in double quotes, text. Throws at whatever is not
 * well-formed: unbalanced or overlapping tags, repeated attributes, `<` in attributes, bare ampersands,
 * characters that XML forbids, anything after the root.
 */
export function parseXml(source: string): XmlElement {
  if (forbidden(source)) throw new Error('a character that XML forbids');
  const token = /<(\/)?([A-Za-z][\w:.-]*)((?:\s+[A-Za-z_][\w:.-]*="[^"<]*")*)\s*(\/)?>|([^<]+)/gy;
  interface Open {
    name: string;
    attributes: Record<string, string>;
    children: XmlElement[];
    text: string;
  }
  const root: Open = { name: '', attributes: {}, children: [], text: '' };
  const stack: Open[] = [root];
  while (token.lastIndex < source.length) {
    const at = token.lastIndex;
    const match = token.exec(source);
    if (match === null) throw new Error(`not well-formed at ${String(at)}: ${source.slice(at, at + 60)}`);
    const [, closing, name, written, selfClosing, text] = match;
    const top = stack.at(-1)!;
    if (text !== undefined) {
      if (stack.length === 1 && text.trim() !== '') throw new Error('text outside the root');
      for (const open of stack) open.text += resolve(text);
    } else if (closing !== undefined) {
      if (top.name !== name) throw new Error(`</${name!}> closes <${top.name}>`);
      stack.pop();
      stack.at(-1)!.children.push(top);
    } else {
      const attributes: Record<string, string> = {};
      for (const [, key, value] of (written ?? '').matchAll(/([\w:.-]+)="([^"]*)"/g)) {
        if (Object.hasOwn(attributes, key!)) throw new Error(`attribute ${key!} twice`);
        attributes[key!] = resolve(value!);
      }
      const open: Open = { name: name!, attributes, children: [], text: '' };
      if (selfClosing === undefined) stack.push(open);
      else top.children.push(open);
    }
  }
  if (stack.length !== 1) throw new Error(`<${stack.at(-1)!.name}> is not closed`);
  if (root.children.length !== 1) throw new Error('not one root');
  return root.children[0]!;
}

/** A figure's drawing; where it is drawn in several parts, the further ones are within the first. */
export function parseDrawing(svg: string): XmlElement {
  const [first, ...others] = parseXml(`<div>${svg}</div>`).children;
  const text = [first!, ...others].map((part) => part.text).join(' ');
  return { ...first!, children: [...first!.children, ...others], text };
}

/** The element and everything within it, in the order of the document. */
export function everyElement(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap(everyElement)];
}

/** All elements that carry a class. */
export function withClass(element: XmlElement, name: string): XmlElement[] {
  return everyElement(element).filter(({ attributes }) =>
    (attributes['class'] ?? '').split(' ').includes(name),
  );
}
