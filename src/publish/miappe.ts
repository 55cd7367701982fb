import type { Trial } from '../model/trial.ts';
import type { Dataset } from './dataset.ts';
import { csvText, type Cell } from './csv.ts';
import { designInWords } from './described-in-words.ts';
import { miappeMaterials } from './miappe-materials.ts';
import { lacking, given, type MiappeRecord } from './miappe-record.ts';
import { miappeUnits } from './miappe-units.ts';
import { oneLine } from './one-line.ts';
import type { PublishedFile } from './published-file.ts';

/** The sections of the MIAPPE 1.2 checklist that apply, each a list of records by the checklist's codenames. */
export type Miappe = Record<string, readonly MiappeRecord[]>;

function investigation(set: Dataset): MiappeRecord {
  return {
    investigationId: set.identifier,
    investigationTitle: set.title,
    investigationDescription: set.description,
    submissionDate: set.created,
    publicReleaseDate: set.released,
    license: set.licence.address,
    miappeVersion: '1.2',
    ...given('associatedPublication', set.related.map((work) => work.address).join('; ')),
  };
}

function study(set: Dataset, { metadata }: Trial): MiappeRecord {
  const { site } = set;
  const units = [...new Set(metadata.variables.map((variable) => variable.of))].join(' and ');
  return {
    studyId: set.id,
    studyTitle: set.title,
    studyDescription: metadata.question,
    studyStartDate: set.days?.first ?? lacking,
    ...given('studyEndDate', set.days?.last),
    contactInst: set.publisher,
    locationCountry: site.country ?? lacking,
    siteName: site.name,
    ...given('locationLatitude', site.latitude),
    ...given('locationLongitude', site.longitude),
    ...given(
      'locationAltitude',
      site.elevation_m === undefined ? undefined : `${String(site.elevation_m)} m`,
    ),
    expeDesignDesc: designInWords(metadata),
    obsUnitLevelHierarchy: 'block>container>plot>position>plant',
    obsUnitDesc: `Each value belongs to a ${units}. A position is one hole or pot of a container's grid.`,
    growthFacilityDesc: `${site.setting}; ${[...new Set(metadata.containers.map((each) => each.kind))].join(', ')} of nutrient solution`,
  };
}

function people(set: Dataset): MiappeRecord[] {
  return [...set.creators, ...set.contributors].map((person) => ({
    personName: person.name.full,
    ...given('personId', person.orcid ?? undefined),
    personRole: person.parts.join('; '),
    personAffiliation: lacking,
  }));
}

function events({ metadata }: Trial): MiappeRecord[] {
  const { sown, germinated, transplanted, cuts = [] } = metadata.dates ?? {};
  const dated: [string, string | undefined][] = [
    ['sowing', sown],
    ['germination', germinated],
    ['transplanting', transplanted],
    ...cuts.map((day): [string, string] => ['harvest', day]),
  ];
  return [
    ...dated.flatMap(([eventType, eventDate]) => (eventDate === undefined ? [] : [{ eventType, eventDate }])),
    ...(metadata.events ?? []).map(({ date, where, what }) => ({
      eventType: 'note',
      eventDesc: where === undefined ? what : `${where}: ${what}`,
      eventDate: date,
    })),
  ];
}

function environment({ metadata }: Trial): MiappeRecord[] {
  const salts = (metadata.nutrients?.salts ?? []).map(
    (salt) => `${salt.name} ${String(salt.grams_per_litre)} g/L`,
  );
  return [
    { envParam: 'cover of the growing area', envParamValue: metadata.site.setting },
    ...(salts.length === 0 ? [] : [{ envParam: 'nutrient solution', envParamValue: salts.join('; ') }]),
  ];
}

function variables(set: Dataset): MiappeRecord[] {
  return set.variables.map((variable) => ({
    variableId: variable.id,
    variableName: variable.name,
    traitName: variable.name,
    ...given('traitAccNumber', variable.trait?.id),
    methodName: variable.kind,
    methodDesc: variable.method,
    scaleName: variable.unit?.ucum ?? (variable.kind === 'scored' ? 'score' : 'count'),
  }));
}

/** miappe.json: what the trial says, under the codenames of the MIAPPE 1.2 checklist. */
export function miappe(set: Dataset, trial: Trial, files: readonly PublishedFile[]): Miappe {
  const factors = trial.metadata.factors ?? [];
  return {
    INVESTIGATION: [investigation(set)],
    STUDY: [study(set, trial)],
    PERSON: people(set),
    'DATA FILE': files.map((file) => ({
      dataFileLink: set.dataPage + encodeURIComponent(file.name),
      dataFileDesc: file.description,
      dataFileVersion: set.version,
    })),
    'BIOLOGICAL MATERIAL': miappeMaterials(set, trial.metadata),
    ENVIRONMENT: environment(trial),
    'EXPERIMENTAL FACTOR': factors.map((factor) => ({
      expeFactorType: factor.name,
      ...given('expeFactorDesc', factor.kind === 'cultivar' ? 'The levels are cultivars.' : undefined),
      expeFactorValues: factor.levels.map((level) => level.name ?? level.id).join('; '),
    })),
    EVENT: events(trial),
    'OBSERVATION UNIT': miappeUnits(trial),
    'OBSERVED VARIABLE': variables(set),
  };
}

/** miappe.tsv: the same, a line for each value. Tabs and line breaks inside a value become blanks. */
export function miappeTsv(sections: Miappe): string {
  const rows = Object.entries(sections).flatMap(([section, records]) =>
    records.flatMap((record, index) =>
      Object.entries(record).map(([field, value]): Cell[] => [
        section,
        index + 1,
        field,
        typeof value === 'number' ? value : oneLine(value),
      ]),
    ),
  );
  return csvText({ columns: ['section', 'record', 'field', 'value'], rows }, '\t');
}
