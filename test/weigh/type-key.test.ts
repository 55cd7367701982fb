import { expect, test } from 'vitest';
import { typedValue, typeKey } from '../../src/weigh/type-key.ts';
import { valueForms } from '../../src/weigh/value-form.ts';
import { folderToWeigh, openedFolder } from './folder-to-weigh.ts';

const form = { id: 'w', name: 'Weight', unit: 'g', decimals: 1, mark: '.' } as const;
const typed = (keys: string, of: Parameters<typeof typeKey>[2] = form) =>
  keys.split('').reduce((text, key) => typeKey(text, key === '<' ? 'back' : key, of), '');

test('Keys make a number, and none that the scale cannot show', () => {
  expect(typed('154')).toBe('154');
  expect(typed('12.55')).toBe('12.5');
  expect(typed('12..5')).toBe('12.5');
  expect(typed('.5')).toBe('0.5');
  expect(typed('007')).toBe('7');
  expect(typed('12<<<3')).toBe('3');
  expect(typed('12.5', { ...form, decimals: 0 })).toBe('125');
  expect(typed('12.5', { ...form, mark: ',' })).toBe('12,5');
  expect(typed('123456789')).toBe('1234567');
  expect(typedValue(typed('12.'), form)).toBe('12');
});

const formsWith = (variable: string, more = '') =>
  valueForms(
    openedFolder(
      folderToWeigh({
        'trial.yaml': folderToWeigh()
          .get('trial.yaml')!
          .replace(/ {2}- \{id: fresh_weight.*\n/, `  - ${variable}\n${more}`),
      }),
    ).trial.metadata,
  );

test('The decimals are those of the step of the scale, in the unit of the file', () => {
  const decimals = (variable: string, more = '') => formsWith(variable, more)[0]?.decimals;
  const weight = 'id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g';
  expect(decimals(`{${weight}, resolution: 5}`)).toBe(0);
  expect(decimals(`{${weight}, resolution: 0.5}`)).toBe(1);
  expect(decimals(`{${weight}, resolution: 0.01}`)).toBe(2);
  expect(decimals(`{${weight}}`)).toBe(3);
  expect(decimals('{id: leaves, name: Leaves, of: plant, kind: counted}')).toBe(0);
  expect(decimals('{id: taste, name: Taste, of: plant, kind: scored, resolution: 0.5}')).toBe(1);
  const inKilograms =
    'harvest: {columns: {fresh_weight: {column: Wt, unit: kg}}, delimiter: ";", decimal: ","}\n';
  expect(formsWith(`{${weight}, resolution: 1}`, inKilograms)[0]).toMatchObject({
    unit: 'kg',
    decimals: 3,
    mark: ',',
  });
});
