import type { Place } from './place.ts';
import type { SheetFault } from './sheet-fault.ts';
import type { MarkdownNode } from './sheet-parser.ts';
import type { SheetSource } from './sheet-source.ts';

/** Nodes within nodes beyond this are no fact sheet's, and a page of them could not be drawn. */
const deepest = 16;

/** What is known while a tree is walked. */
export interface SheetReading {
  source: SheetSource;
  faults: SheetFault[];
  /** The address of each `[label]: address`, by label. */
  definitions: ReadonlyMap<string, string>;
  placeOf(node: MarkdownNode): Place;
  /** Keeps an expression as a fault; a comment is none. */
  expression(value: string, place: Place): void;
  /** Walks one level further down, or reports that it is too deep and gives nothing. */
  deeper<T>(nodes: readonly MarkdownNode[], walk: () => T[]): T[];
}

export function sheetReading(source: SheetSource, definitions: ReadonlyMap<string, string>): SheetReading {
  const faults: SheetFault[] = [];
  let depth = 0;
  const placeOf = (node: MarkdownNode): Place => source.place(node.position?.start.offset ?? 0);
  return {
    source,
    faults,
    definitions,
    placeOf,
    expression: (value, place) => {
      if (isComment(value)) return;
      faults.push({ kind: 'expression', place, found: `{${value}}`, detail: '' });
    },
    deeper: (nodes, walk) => {
      const first = nodes[0];
      if (first === undefined) return [];
      if (depth === deepest) {
        faults.push({ kind: 'too deep', place: placeOf(first), found: first.type, detail: String(deepest) });
        return [];
      }
      depth += 1;
      const found = walk();
      depth -= 1;
      return found;
    },
  };
}

/** True for one comment and nothing else; an empty pair of braces says as little. */
function isComment(value: string): boolean {
  const inner = /^\s*\/\*([\s\S]*)\*\/\s*$/.exec(value)?.[1];
  return inner === undefined ? value.trim() === '' : !inner.includes('*/');
}
