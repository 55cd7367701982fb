/** One record of a section: the checklist's codename to its value. */
export type MiappeRecord = Readonly<Record<string, string | number>>;

/** What stands where the checklist asks for something that the trial does not say. */
export const lacking = 'not provided';

/** The field where there is a value, nothing where there is none. */
export function given(codename: string, value: string | number | undefined): MiappeRecord {
  return value === undefined || value === '' ? {} : { [codename]: value };
}
