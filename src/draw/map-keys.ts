import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatBare } from '../compute/format/format-quantity.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import { say } from '../model/say.ts';
import { type MarkedStatus, markedStatuses, statusMark } from './status-mark.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import type { ValueSteps } from './value-steps.ts';
import { wrapText } from './wrap-text.ts';

/** A piece of a key and the height it takes. */
export interface KeyPiece {
  svg: string;
  height: number;
}

const row = 19;
const lineHeight = 15;

/** The steps of the shades with their boundaries in metric and in US units, in a bar as wide as given. */
export function scaleKey(
  scale: ValueSteps,
  shadeOf: (step: number) => string,
  unit: string,
  at: { x: number; y: number; width: number; plus?: boolean },
): KeyPiece {
  const style = { plus: at.plus === true };
  const us = usUnit(unit);
  const units = [unitName(unit), us?.unit ?? ''];
  const room = Math.max(...units.map((each) => textWidth(each, 12))) + 8;
  const each = (at.width - room) / scale.steps.length;
  const swatches = scale.steps.map((step, index) =>
    element('rect', { class: shadeOf(step), x: at.x + index * each, y: at.y, width: each, height: 11 }),
  );
  const digits = digitsOfBoundaries(scale.boundaries);
  const printed = scale.boundaries.map((boundary) => formatBare(boundary, unit, digits, style));
  const lines = [
    printed.map(({ metric }) => metric),
    us === null ? [] : printed.map((both) => both.us ?? ''),
  ];
  const texts = lines.flatMap((texts, line) => [
    ...texts.map((text, index) =>
      label(text, {
        class: 'tick',
        x: at.x + (index + 1) * each,
        y: at.y + 25 + line * 14,
        'text-anchor': 'middle',
      }),
    ),
    texts.length === 0
      ? ''
      : label(units[line]!, {
          class: 'tick',
          x: at.x + at.width,
          y: at.y + 25 + line * 14,
          'text-anchor': 'end',
        }),
  ]);
  const height = scale.boundaries.length === 0 ? 18 : us === null ? 34 : 48;
  return { svg: element('g', { class: 'key scale-key' }, ...swatches, ...texts), height };
}

/** As many decimals as the boundaries have. */
function digitsOfBoundaries(boundaries: readonly number[]): number {
  const sizes = boundaries.map((boundary) => Number(Math.abs(boundary).toPrecision(6)));
  return Math.max(0, ...sizes.filter((size) => size > 0).map(digitsOfValue));
}

/** Pieces of a key set one after the other, in as many lines as they need. */
function flowing(
  pieces: readonly { width: number; lines?: number; draw(x: number, y: number): string }[],
  at: { x: number; y: number; width: number },
  kind: string,
): KeyPiece {
  let [x, y] = [at.x, at.y + 12];
  const drawn = pieces.map((piece) => {
    if (x > at.x && x + piece.width > at.x + at.width) [x, y] = [at.x, y + row];
    const svg = piece.draw(x, y);
    const more = (piece.lines ?? 1) - 1;
    y += more * lineHeight;
    // Beside a piece of several lines stands nothing.
    x = more > 0 ? at.x + at.width : x + piece.width + 14;
    return svg;
  });
  const height = pieces.length === 0 ? 0 : y - at.y + 8;
  return { svg: pieces.length === 0 ? '' : element('g', { class: `key ${kind}` }, ...drawn), height };
}

/** The marks in use, each with its word. */
export function markKey(
  statuses: ReadonlySet<MarkedStatus>,
  at: { x: number; y: number; width: number },
): KeyPiece {
  const used = markedStatuses.filter((status) => statuses.has(status));
  return flowing(
    used.map((status) => ({
      width: 18 + textWidth(say(status), 12),
      draw: (x, y) =>
        statusMark(status, x + 6, y - 4, 5) + label(say(status), { class: 'tick', x: x + 17, y }),
    })),
    at,
    'mark-key',
  );
}

/** The short names in use, each with its full name. */
export function nameKey(
  names: ReadonlyMap<string, string>,
  at: { x: number; y: number; width: number },
): KeyPiece {
  const gap = 5;
  return flowing(
    [...names].map(([full, short]) => {
      const indent = textWidth(short, 12, true) + gap;
      const lines = wrapText(full, at.width - indent, 12);
      return {
        width: indent + Math.max(...lines.map((line) => textWidth(line, 12))),
        lines: lines.length,
        // Apart, so that a name written from right to left does not run into its short form.
        draw: (x, y) =>
          label(short, { class: 'tick strong', x, y }) +
          lines
            .map((line, index) => label(line, { class: 'tick', x: x + indent, y: y + index * lineHeight }))
            .join(''),
      };
    }),
    at,
    'name-key',
  );
}
