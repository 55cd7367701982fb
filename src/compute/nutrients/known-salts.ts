/** A single salt of the trade, or an acid or alkali, by name and by formula. */
export interface KnownSalt {
  /** Its names in plain form (see `plainName`), the usual one first. */
  names: readonly string[];
  /** Its formulas: hydrates that are sold. The solubility is that of the first. */
  formulas: readonly string[];
  /** Grams that dissolve in a litre of water at 20 C, of the first formula; null where we have no value. */
  solubility: number | null;
}

/**
 * Single salts that growers buy. Solubilities at 20 C are from memory of the tables in the CRC Handbook of
 * Chemistry and Physics, in grams per litre of water, except mono- and diammonium phosphate, which were
 * compared with the solubility table of a chemical supplier. Handbooks differ by some percent, technical grades
 * dissolve less cleanly, and two salts that share an ion dissolve less than each alone.
 */
export const knownSalts: readonly KnownSalt[] = [
  salt(1290, ['Ca(NO3)2.4H2O', '5Ca(NO3)2.NH4NO3.10H2O', 'Ca(NO3)2'], 'calcium nitrate', 'nitrate of lime'),
  salt(316, ['KNO3'], 'potassium nitrate', 'saltpetre', 'saltpeter'),
  salt(111, ['K2SO4'], 'potassium sulfate', 'sulfate of potash'),
  salt(226, ['KH2PO4'], 'monopotassium phosphate', 'potassium dihydrogen phosphate', 'mkp'),
  salt(1500, ['K2HPO4'], 'dipotassium phosphate', 'dipotassium hydrogen phosphate'),
  salt(340, ['KCl'], 'potassium chloride', 'muriate of potash'),
  salt(368, ['NH4H2PO4'], 'monoammonium phosphate', 'ammonium dihydrogen phosphate', 'map'),
  salt(686, ['(NH4)2HPO4'], 'diammonium phosphate', 'dap'),
  salt(754, ['(NH4)2SO4'], 'ammonium sulfate', 'sulfate of ammonia'),
  salt(1920, ['NH4NO3'], 'ammonium nitrate'),
  salt(
    710,
    ['MgSO4.7H2O', 'MgSO4', 'MgSO4.H2O'],
    'magnesium sulfate',
    'epsom salt',
    'epsom salts',
    'bitter salt',
  ),
  salt(1250, ['Mg(NO3)2.6H2O'], 'magnesium nitrate'),
  salt(980, ['CaCl2.2H2O', 'CaCl2', 'CaCl2.6H2O'], 'calcium chloride'),
  salt(2.4, ['CaSO4.2H2O', 'CaSO4'], 'calcium sulfate', 'gypsum'),
  salt(1080, ['CO(NH2)2', '(NH2)2CO'], 'urea'),
  salt(47, ['H3BO3', 'B(OH)3'], 'boric acid'),
  salt(47, ['Na2B4O7.10H2O', 'Na2B4O7.5H2O'], 'borax', 'sodium borate', 'sodium tetraborate'),
  salt(480, ['FeSO4.7H2O'], 'iron sulfate', 'ferrous sulfate', 'iron(ii) sulfate'),
  salt(700, ['MnSO4.H2O', 'MnSO4.4H2O'], 'manganese sulfate'),
  salt(960, ['ZnSO4.7H2O', 'ZnSO4.H2O'], 'zinc sulfate'),
  salt(320, ['CuSO4.5H2O', 'CuSO4'], 'copper sulfate'),
  salt(560, ['Na2MoO4.2H2O'], 'sodium molybdate'),
  salt(null, ['K2SiO3'], 'potassium silicate'),
  salt(null, ['KHCO3'], 'potassium bicarbonate'),
  salt(null, ['K2CO3'], 'potassium carbonate'),
  salt(null, ['KOH'], 'potassium hydroxide'),
  salt(null, ['H3PO4'], 'phosphoric acid'),
  salt(null, ['HNO3'], 'nitric acid'),
  salt(null, ['H2SO4'], 'sulfuric acid'),
];

function salt(solubility: number | null, formulas: readonly string[], ...names: string[]): KnownSalt {
  return { names, formulas, solubility };
}

const sortsAndGrades =
  /\b(greenhouse|horticultural|technical|agricultural|fertili[sz]er|soluble|water|prilled|crystalline|crystals?|food|grade|pure|anhydrous|(mono|di|tetra|penta|hexa|hepta|deca)?hydrate)\b|\b\d+(\.\d+)?(-\d+(\.\d+)?)+\b/g;

/** A salt's name in plain form: small letters, one spelling of sulfate, without grade, hydrate or N-P-K. */
export function plainName(name: string): string {
  return name
    .toLowerCase()
    .replaceAll('sulph', 'sulf')
    .replaceAll(sortsAndGrades, ' ')
    .replaceAll(/[,;]|\(\s*\)/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}

/** The single salt that a name means, or null where it means a blend or nothing we know. */
export function knownSalt(name: string): KnownSalt | null {
  const plain = plainName(name);
  const before = /^([^()]+) \(/.exec(plain)?.[1] ?? plain;
  return knownSalts.find(({ names }) => names.includes(plain) || names.includes(before)) ?? null;
}
