import { expect, test } from 'vitest';
import { readingsCsv } from '../../src/weigh/readings-csv.ts';
import { folderToWeigh, openedFolder } from './folder-to-weigh.ts';

const reading = (values: Record<string, string>, remark = '') =>
  ({ kind: 'reading', container: 'T1', date: '2025-10-02', values, remark }) as const;

test('Without readings there is no file', () => {
  expect(readingsCsv(null, [])).toBeNull();
});

test('A file of its own has the columns that were read', () => {
  expect(readingsCsv(null, [reading({ ph: '6.1', level: '', ec: '1.8' })])).toBe(
    'date,container,ec,ph\n2025-10-02,T1,1.8,6.1\n',
  );
});

test('New readings stand after those of the folder, in its headings and marks', () => {
  const text = 'date;container;ph;level\n2025-09-20;T1;6,0;21,5\n';
  const yaml = `${folderToWeigh().get('trial.yaml')!}harvest: {delimiter: ";", decimal: ","}\n`;
  const { readings } = openedFolder(folderToWeigh({ 'trial.yaml': yaml, 'readings.csv': text }));
  expect(readingsCsv(readings, [reading({ ph: '6.1', temperature: '-0.5' }, 'frost')])).toBe(
    'date;container;ph;level;temperature;remark\n2025-09-20;T1;6,0;21,5;;\n2025-10-02;T1;6,1;;-0,5;frost\n',
  );
});
