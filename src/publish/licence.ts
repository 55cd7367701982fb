/** A licence as every file names it. */
export interface Licence {
  /** The SPDX identifier. */
  id: string;
  name: string;
  address: string;
  /** What a reader may do, in one line; only for licences whose terms are known here. */
  allows: string | null;
}

const openData: Record<string, Omit<Licence, 'id'>> = {
  'CC0-1.0': {
    name: 'Creative Commons Zero 1.0 Universal',
    address: 'https://creativecommons.org/publicdomain/zero/1.0/',
    allows: 'You may do anything with these data without asking; a citation is a courtesy.',
  },
  'PDDL-1.0': {
    name: 'Open Data Commons Public Domain Dedication and License 1.0',
    address: 'https://opendatacommons.org/licenses/pddl/1-0/',
    allows: 'You may do anything with these data without asking; a citation is a courtesy.',
  },
  'ODC-By-1.0': {
    name: 'Open Data Commons Attribution License 1.0',
    address: 'https://opendatacommons.org/licenses/by/1-0/',
    allows: 'You may use, change and share these data if you name where they come from.',
  },
  'ODbL-1.0': {
    name: 'Open Data Commons Open Database License 1.0',
    address: 'https://opendatacommons.org/licenses/odbl/1-0/',
    allows:
      'You may use, change and share these data if you name where they come from and share a changed database under the same licence.',
  },
};

const clauses: Record<string, string> = {
  SA: 'share what you make of them under the same licence',
  NC: 'do not sell them or use them to make money',
  ND: 'pass them on unchanged only',
};

function creativeCommons(id: string): Licence | null {
  const parts = /^CC-(BY(?:-(?:NC|SA|ND))*)-(\d\.\d)$/.exec(id);
  const [, kind = '', version = ''] = parts ?? [];
  if (parts === null) return null;
  const [, ...more] = kind.split('-');
  const conditions = ['name where they come from', ...more.map((clause) => clauses[clause] ?? '')];
  const verbs = more.includes('ND') ? 'use and share' : 'use, change and share';
  const last = conditions.pop() ?? '';
  const list = conditions.length === 0 ? last : `${conditions.join(', ')} and ${last}`;
  const words: Record<string, string> = {
    BY: 'Attribution',
    NC: 'NonCommercial',
    SA: 'ShareAlike',
    ND: 'NoDerivatives',
  };
  return {
    id,
    name: `Creative Commons ${kind
      .split('-')
      .map((clause) => words[clause] ?? clause)
      .join('-')} ${version}`,
    address: `https://creativecommons.org/licenses/${kind.toLowerCase()}/${version}/`,
    allows: `You may ${verbs} these data if you ${list}.`,
  };
}

/** The licence of an SPDX identifier: its name, its address, and what it allows where that is known. */
export function licence(id: string): Licence {
  const known = openData[id];
  if (known !== undefined) return { id, ...known };
  return (
    creativeCommons(id) ?? {
      id,
      name: id,
      address: `https://spdx.org/licenses/${encodeURIComponent(id)}.html`,
      allows: null,
    }
  );
}
