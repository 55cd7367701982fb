/** How each option of `plan` is written; a wrong use names the option and shows how. */
import { lotUnits } from '../compute/lots/lot-place.ts';
import type { Cultivar } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { Factor } from '../model/trial.ts';
import type { PlanContainer, PlanRequest } from '../plan/plan-request.ts';
import { wrongUse } from './usage.ts';

export function refuse(message: string): never {
  throw wrongUse(`${message}.`);
}

export const shown = (text: string) => `"${text.slice(0, 60)}"`;

export function seasonOf(text: string): PlanRequest['season'] {
  const [, before = '', year = '', after = ''] = /^(\D*?)\s*(\d{4})\s*(\D*)$/.exec(text.trim()) ?? [];
  const name = `${before}${after}`.trim();
  if (name === '')
    refuse(
      say('--season is a name and a year, such as "spring 2027"; found {found}', { found: shown(text) }),
    );
  return { year: Number(year), name };
}

/** `strength=half,full@container`: what is behind the @ is all that it can be allotted to. */
export function factorOf(text: string, check: string | undefined, cultivars: readonly Cultivar[]): Factor {
  const [, id = '', list = ''] = /^([^=]+)=([^@]+)(?:@.*)?$/.exec(text) ?? [];
  const levels = list
    .split(',')
    .map((level) => level.trim())
    .filter((level) => level !== '');
  const [first, ...rest] = levels;
  if (first === undefined || rest.length === 0)
    refuse(
      say('--factor is a name and its levels, such as cultivar=cobalt-wren,slate-egret; found {found}', {
        found: shown(text),
      }),
    );
  if (check !== undefined && !levels.includes(check))
    refuse(
      say('--check names a level of the first factor ({levels}); found {found}', {
        levels: levels.join(', '),
        found: shown(check),
      }),
    );
  const isCultivar = id === 'cultivar';
  const levelOf = (level: string) =>
    isCultivar && !cultivars.some((cultivar) => cultivar.id === level)
      ? { id: level, name: level }
      : { id: level };
  return {
    id,
    name: `${id[0]!.toUpperCase()}${id.slice(1).replaceAll('_', ' ')}`,
    ...(isCultivar ? { kind: 'cultivar' as const } : {}),
    levels: [levelOf(first), ...rest.map(levelOf)],
    ...(check === undefined ? {} : { check }),
  };
}

export function onlyOf(factors: readonly string[]): PlanRequest['only'] {
  const bound = factors.flatMap((text) => {
    const [, id, unit] = /^([^=]+)=[^@]*@(.*)$/.exec(text) ?? [];
    return id === undefined || unit === undefined ? [] : [[id, oneOf('factor', unit, lotUnits)] as const];
  });
  return Object.fromEntries(bound);
}

export function containerOf(text: string): PlanContainer {
  const [, id = '', size = '', block] = /^([^=]+)=([^@]+)(?:@(.+))?$/.exec(text) ?? [];
  if (id === '')
    refuse(
      say('--container is an id, rows x columns and perhaps @ a block, such as T1=3x4@1; found {found}', {
        found: shown(text),
      }),
    );
  return { id, ...sizeOf('container', size), ...(block === undefined ? {} : { block }) };
}

export function sizeOf(option: string, text: string): { rows: number; columns: number } {
  const [, rows, columns] = /^\s*([1-9]\d{0,3})\s*[x×]\s*([1-9]\d{0,3})\s*$/i.exec(text) ?? [];
  if (rows === undefined || columns === undefined)
    refuse(
      say('--{option} gives rows x columns, such as 3x4; found {found}', { option, found: shown(text) }),
    );
  return { rows: Number(rows), columns: Number(columns) };
}

export function sizesOf(text: string): number[] {
  const sizes = text.split(',').map((size) => (size.trim() === '' ? NaN : Number(size)));
  const wrong = sizes.findIndex((size) => !Number.isFinite(size));
  if (wrong >= 0)
    refuse(
      say('--sizes are numbers with commas between, such as 31,28.5; found {found}', {
        found: shown(text.split(',')[wrong] ?? ''),
      }),
    );
  return sizes;
}

export function wholeOf(option: string, text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || !Number.isSafeInteger(value))
    refuse(say('--{option} is a whole number; found {found}', { option, found: shown(text) }));
  return value;
}

export function percentOf(text: string): number {
  const value = Number(text);
  if (!(value > 0 && value <= 200))
    refuse(say('--variation is in percent, above 0, such as 15; found {found}', { found: shown(text) }));
  return value;
}

export function oneOf<T extends string>(option: string, text: string, choices: readonly T[]): T {
  return (
    choices.find((choice) => choice === text) ??
    refuse(
      say('--{option} is {choices}; found {found}', {
        option,
        choices: choices.join(', '),
        found: shown(text),
      }),
    )
  );
}
