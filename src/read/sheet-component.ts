import type { SheetAttribute } from '../model/fact-sheet.ts';
import type { MarkdownNode } from './sheet-parser.ts';
import type { SheetFault } from './sheet-fault.ts';
import type { SheetSource } from './sheet-source.ts';

export type Tag = Extract<MarkdownNode, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>;

/** A component's name: one word in Latin letters that begins with a capital. All other tags are raw HTML. */
const componentName = /^[A-Z][A-Za-z0-9]*$/;

/** The name and the literal attributes of a tag; null where it is no component, which is then a fault. */
export function componentOf(
  tag: Tag,
  source: SheetSource,
  faults: SheetFault[],
): { name: string; attributes: SheetAttribute[] } | null {
  const offset = tag.position?.start.offset ?? 0;
  const name = tag.name ?? '';
  if (!componentName.test(name)) {
    faults.push({ kind: 'raw tag', place: source.place(offset), found: `<${name}>`, detail: '' });
    return null;
  }
  const attributes: SheetAttribute[] = [];
  for (const attribute of tag.attributes) {
    const place = source.place(attributeOffset(attribute, tag));
    const fault = (kind: SheetFault['kind'], found: string): void => {
      faults.push({ kind, place, found, detail: name });
    };
    if (attribute.type === 'mdxJsxExpressionAttribute') fault('spread attribute', attribute.value);
    else if (/^on/i.test(attribute.name)) fault('event attribute', attribute.name);
    else if (attribute.value === null || attribute.value === undefined)
      fault('bare attribute', attribute.name);
    else if (typeof attribute.value !== 'string') fault('expression attribute', attribute.name);
    else if (attributes.some((one) => one.name === attribute.name)) fault('attribute twice', attribute.name);
    else attributes.push({ name: attribute.name, value: attribute.value, ...place });
  }
  return { name, attributes };
}

function attributeOffset(attribute: Tag['attributes'][number], tag: Tag): number {
  const position = attribute.position;
  return position?.start.offset ?? tag.position?.start.offset ?? 0;
}
