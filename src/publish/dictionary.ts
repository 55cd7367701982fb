import cultivarsSchema from '../../schemas/cultivars.schema.json' with { type: 'json' };
import findingsSchema from '../../schemas/findings.schema.json' with { type: 'json' };
import harvestTable from '../../schemas/harvest.table.json' with { type: 'json' };
import layoutTable from '../../schemas/layout.table.json' with { type: 'json' };
import readingsTable from '../../schemas/readings.table.json' with { type: 'json' };
import summaryTable from '../../schemas/summary.table.json' with { type: 'json' };
import trialSchema from '../../schemas/trial.schema.json' with { type: 'json' };
import weightsTable from '../../schemas/weights.table.json' with { type: 'json' };
import '../model/meanings.ts';
import { say } from '../model/say.ts';
import { fieldsOfSchema } from './dictionary-of-schema.ts';
import { fieldsOfTable } from './dictionary-of-table.ts';

/** One field of a file: its name (or path of keys), what it holds, and whether it must be there. */
export interface DictionaryField {
  name: string;
  /** What kind of value it is, in words. */
  kind: string;
  needed: boolean;
  meaning: string;
  /** One example as it would be written, empty where the schema gives none. */
  example: string;
}

/** The fields of one file. */
export interface DictionarySection {
  /** The anchor of the section. */
  id: string;
  file: string;
  about: string;
  fields: readonly DictionaryField[];
}

/**
 * The data dictionary, in the language being written: what each field of each file means, read from the schemas that
 * the checks use.
 */
export const dictionary = (): readonly DictionarySection[] => [
  ofTable('weights.csv', weightsTable),
  ofTable('summary.csv', summaryTable),
  ofTable('harvest.csv', harvestTable),
  ofTable('layout.csv', layoutTable),
  ofTable('readings.csv', readingsTable),
  ofSchema(say('trial.json and trial.yaml'), trialSchema),
  ofSchema('findings.json', findingsSchema),
  ofSchema('cultivars.yaml', cultivarsSchema),
];

function ofTable(
  file: string,
  table: { description: string } & Parameters<typeof fieldsOfTable>[0],
): DictionarySection {
  return { id: anchor(file), file, about: say(table.description), fields: fieldsOfTable(table) };
}

function ofSchema(file: string, schema: { description: string }): DictionarySection {
  return { id: anchor(file), file, about: say(schema.description), fields: fieldsOfSchema(schema) };
}

function anchor(file: string): string {
  return file.split(' ')[0]!.replaceAll('.', '-');
}
