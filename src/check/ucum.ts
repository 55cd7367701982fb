/**
 * Unit atoms of UCUM (version 2.1, tables 2 to 24) that plants and solutions are measured in; the metric ones take
 * a prefix. A unit beyond these is asked after, not refused.
 */
const metric = new Set([
  'm',
  's',
  'g',
  'K',
  'C',
  'cd',
  'mol',
  'L',
  'l',
  't',
  'ar',
  'Pa',
  'bar',
  'J',
  'W',
  'N',
  'Hz',
  'V',
  'A',
  'S',
  'Ohm',
  'lm',
  'lx',
  'eq',
  'cal',
  'Cel',
  'u',
]);

const others = new Set([
  ...[
    '1',
    '%',
    '10*',
    '10^',
    '[ppth]',
    '[ppm]',
    '[ppb]',
    '[pH]',
    'deg',
    '[degF]',
    'min',
    'h',
    'd',
    'wk',
    'mo',
    'a',
    'rad',
    'har',
  ],
  ...[
    '[in_i]',
    '[ft_i]',
    '[yd_i]',
    '[mi_i]',
    '[in_us]',
    '[ft_us]',
    '[acr_us]',
    '[acr_br]',
    '[sin_i]',
    '[sft_i]',
    '[syd_i]',
  ],
  ...['[oz_av]', '[lb_av]', '[gr]', '[stone_av]', '[ston_av]', '[lton_av]', '[scwt_av]', '[lcwt_av]'],
  ...[
    '[gal_us]',
    '[qt_us]',
    '[pt_us]',
    '[foz_us]',
    '[cup_us]',
    '[tbs_us]',
    '[tsp_us]',
    '[bu_us]',
    '[pk_us]',
    '[gal_br]',
    '[bu_br]',
  ],
]);

const prefixes = [
  '',
  'Y',
  'Z',
  'E',
  'P',
  'T',
  'G',
  'M',
  'k',
  'h',
  'da',
  'd',
  'c',
  'm',
  'u',
  'n',
  'p',
  'f',
  'a',
  'z',
  'y',
];

function isAtom(text: string): boolean {
  if (text === '' || others.has(text) || /^\d+$/.test(text)) return true;
  return prefixes.some((prefix) => text.startsWith(prefix) && metric.has(text.slice(prefix.length)));
}

/** True for a UCUM code made of the known atoms: `g`, `mS/cm`, `kg/m2`, `g.m-2.d-1`, `{plants}`, `1/{pot}`. */
export function isUcum(unit: string): boolean {
  if (unit === '' || /[^!-~]/.test(unit)) return false;
  // An annotation in curly brackets says what is counted and is no unit.
  const bare = unit.replaceAll(/\{[^{}]*\}/g, '').replaceAll(/[()]/g, '');
  if (/[{}]/.test(bare)) return false;
  return bare.split(/[./]/).every((part) => isAtom(part) || isAtom(part.replace(/[+-]?\d+$/, '')));
}
