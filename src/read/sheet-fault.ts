import type { Place } from './place.ts';

/** What can be wrong with the text of a fact sheet, before anything is known of its components. */
export type SheetFaultKind =
  | 'too large'
  | 'too deep'
  | 'too wide'
  | 'syntax'
  | 'front matter'
  | 'unseen'
  | 'import'
  | 'expression'
  | 'raw tag'
  | 'event attribute'
  | 'spread attribute'
  | 'expression attribute'
  | 'bare attribute'
  | 'attribute twice'
  | 'link'
  | 'footnote'
  | 'image';

/** A fault of a fact sheet's text. */
export interface SheetFault {
  kind: SheetFaultKind;
  place: Place;
  /** What stands there: a tag's or an attribute's name, an address, the first line of an expression. */
  found: string;
  /** `no words` for a link that has none. The parser's reason where the kind is syntax; the component's name where an attribute is at fault. */
  detail: string;
}
