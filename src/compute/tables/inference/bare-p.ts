import { formatP } from '../../format/format-p.ts';

/** A probability for a column headed p: "0.018", "< 0.001". */
export function bareP(p: number, alpha: number): string {
  return formatP(p, alpha).replace(/^p\u00A0(?:=\u00A0)?/, '');
}
