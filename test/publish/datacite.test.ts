import { Ajv2019 } from 'ajv/dist/2019.js';
import formats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import { full, library } from './example.ts';
import { datasets, publishedJson } from './published.ts';
import { standardJson, standardsAreHere } from './standards.ts';

const day = String.raw`\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])`;
const dates: Record<string, string> = {
  year: String.raw`\d{4}`,
  yearmonth: String.raw`\d{4}-(?:0[1-9]|1[0-2])`,
  date: day,
  datetime: `${day}T[0-9:.]+(?:Z|[+-][0-9:]+)`,
};

describe('datacite.json', () => {
  test.skipIf(!standardsAreHere).each(datasets)(
    'is DataCite 4.5: %s (needs ../shared/standards/datacite)',
    (_name, item, of) => {
      const ajv = new Ajv2019({ strict: false, allErrors: true });
      formats.default(ajv, ['uri']);
      for (const [name, pattern] of Object.entries(dates)) {
        ajv.addFormat(name, new RegExp(`^${pattern}$`));
        ajv.addFormat(`${name}-range`, new RegExp(`^(?:${pattern})?/(?:${pattern})?$`));
      }
      const valid = ajv.compile(standardJson('datacite/datacite-v4.5.ajv.json') as object);
      expect(valid(publishedJson('datacite.json', item, of)), JSON.stringify(valid.errors)).toBe(true);
    },
  );

  test('gives people their ORCID and part, and the trial its days', () => {
    expect(publishedJson('datacite.json', full, library)).toMatchObject({
      doi: '10.5555/12345678',
      creators: [
        {
          name: 'van der Fennimoor, Orla',
          nameIdentifiers: [{ nameIdentifier: 'https://orcid.org/0000-0002-1825-0097' }],
        },
      ],
      contributors: [
        { name: 'Brackwell, Tam', contributorType: 'DataCollector' },
        { name: 'Ysolde', contributorType: 'ContactPerson' },
      ],
      dates: [
        { date: '2025-12-01', dateType: 'Issued' },
        { date: '2025-11-12', dateType: 'Created' },
        { date: '2025-08-25/2025-11-10', dateType: 'Collected' },
      ],
      relatedIdentifiers: [
        { relationType: 'IsDescribedBy' },
        { relatedIdentifier: '10.5555/87654321', relatedIdentifierType: 'DOI', relationType: 'References' },
        { relatedIdentifier: 'https://example.org/notes', relatedIdentifierType: 'URL' },
      ],
    });
  });
});
