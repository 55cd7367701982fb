import type { TrialWithFindings } from '../model/library.ts';

/** Something that a standard asks for and the trial does not say. */
export interface Lack {
  /** What is asked for, in a grower's words. */
  what: string;
  /** Where it would be written. */
  where: string;
  /** Which standard asks. */
  standard: 'MIAPPE 1.2' | 'DataCite 4.5';
  /** Whether the standard demands it, or only advises. */
  demanded: boolean;
}

/** What a trial's metadata lack to be complete by the standards; the data page names it. */
export function toBeComplete({ trial }: TrialWithFindings): Lack[] {
  const { site, crop, dates, people, factors = [], variables, related = [] } = trial.metadata;
  const miappe = { standard: 'MIAPPE 1.2' as const };
  const cultivarNamed = crop.cultivar !== undefined || factors.some((factor) => factor.kind === 'cultivar');
  const asked: [boolean, Lack][] = [
    [site.country === undefined, { what: 'the country', where: 'site.country', demanded: true, ...miappe }],
    [
      crop.taxon === undefined,
      { what: 'the species in the NCBI taxonomy', where: 'crop.taxon', demanded: true, ...miappe },
    ],
    [
      dates?.sown === undefined,
      { what: 'the day of sowing', where: 'dates.sown', demanded: false, ...miappe },
    ],
    [!cultivarNamed, { what: 'the cultivar', where: 'crop.cultivar', demanded: false, ...miappe }],
    [
      true,
      {
        what: "each person's affiliation; trial.yaml has no place for it",
        where: 'people',
        demanded: true,
        ...miappe,
      },
    ],
    [
      variables.some((variable) => variable.trait === undefined),
      {
        what: "each variable's trait in the Plant Trait Ontology",
        where: 'variables.trait',
        demanded: false,
        ...miappe,
      },
    ],
    [
      people.some((person) => person.orcid === undefined),
      { what: "each person's ORCID", where: 'people.orcid', demanded: false, standard: 'DataCite 4.5' },
    ],
    [
      !related.some((work) => work.kind === 'doi' && work.of === 'this'),
      {
        what: 'a DOI of its own, which a registrar gives',
        where: 'related',
        demanded: false,
        standard: 'DataCite 4.5',
      },
    ],
  ];
  return asked.flatMap(([lacks, lack]) => (lacks ? [lack] : []));
}
