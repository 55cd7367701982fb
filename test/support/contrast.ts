/** Red, green and blue of a colour written #rgb or #rrggbb, each from 0 to 1. */
export function channels(colour: string): [number, number, number] {
  const hex = colour.replace('#', '');
  const full = hex.length === 3 ? [...hex].map((digit) => digit + digit).join('') : hex;
  if (!/^[0-9a-f]{6}$/i.test(full)) throw new Error(`not a colour: ${colour}`);
  return [0, 2, 4].map((at) => Number.parseInt(full.slice(at, at + 2), 16) / 255) as [number, number, number];
}

/** Relative luminance (WCAG 2.2). */
export function luminance(colour: string): number {
  const [red, green, blue] = channels(colour).map((value) =>
    value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** Contrast ratio (WCAG 2.2), 1 to 21. */
export function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
}

/** Lightness by CIE 1976, 0 to 100. */
export function lightness(colour: string): number {
  const y = luminance(colour);
  return y > (6 / 29) ** 3 ? 116 * Math.cbrt(y) - 16 : y * (29 / 3) ** 3;
}
