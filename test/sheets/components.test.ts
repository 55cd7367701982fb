import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesPublished } from '../../src/commands/files-published.ts';
import { libraryOf } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { plainText } from '../../src/compute/words/words.ts';
import type { Inference } from '../../src/model/findings.ts';
import { inLanguage } from '../../src/model/language.ts';
import type { Library } from '../../src/model/library.ts';
import { readFactSheet } from '../../src/read/read-fact-sheet.ts';
import { sheetPages } from '../../src/publish/sheet-pages.ts';
import { fileLinkProblems } from '../../src/sheets/check-file-links.ts';
import { componentExamples } from '../../src/sheets/component-examples.ts';
import { sheetComponents } from '../../src/sheets/components.ts';
import type { Piece } from '../../src/sheets/piece.ts';
import { resolveSheet } from '../../src/sheets/resolve-sheet.ts';

const demo = libraryOf(await loadContent(fileURLToPath(new URL('../../content', import.meta.url))));
const itemOf = (id: string) => demo.trials.find(({ trial }) => trial.id === id)!;
const autumn = itemOf('autumn-lettuce-2025');

/** What a sheet of a demo trial says, without links; and its problems. */
function resolved(id: string | null, text: string, library: Library = demo) {
  const own = id === null ? null : library.trials.find(({ trial }) => trial.id === id)!;
  const { sheet } = readFactSheet(text, 'factsheet.mdx');
  const trials = own === null ? sheet!.trials.map((each) => each.id) : [own.trial.id];
  const { pieces, problems } = resolveSheet({
    sheet: sheet!,
    library,
    own,
    trials,
    faulty: new Set(['trial-with-errors']),
    alone: false,
  });
  const all = [...pieces.values()].flat();
  return { pieces: all, problems, text: all.map(said).join(' ') };
}

function said(piece: Piece): string {
  if (piece.kind === 'words')
    return plainText([...piece.words, ...piece.behind]).replaceAll(/[\u00a0\u202f]/g, ' ');
  return piece.kind === 'sentences' ? piece.sentences.map((words) => plainText(words)).join(' ') : '';
}

const inferenceOf = (id: string, measure: Inference['measure'], cut: Inference['cut'] = 'all') =>
  itemOf(id).findings!.inference.find((entry) => entry.measure === measure && entry.cut === cut)!;

describe('Value', () => {
  it('prints the mean of the findings with its unit and the interval that the analysis gives it', () => {
    const mean = autumn.findings!.treatments.find(
      ({ treatment }) => treatment['cultivar'] === 'russet-plover',
    )!.per_plant_set!.mean!;
    const { lower, upper } = inferenceOf('autumn-lettuce-2025', 'per_plant_set').means.find(
      ({ treatment }) => treatment['cultivar'] === 'russet-plover',
    )!;
    const { text } = resolved(
      'autumn-lettuce-2025',
      '<Value of="mean" where="cultivar=russet-plover" digits="1" />',
    );
    expect(text).toBe(`${mean.toFixed(1)} g (95% interval ${lower!.toFixed(1)} to ${upper!.toFixed(1)} g)`);
  });

  it('gives both units, and leads to the working on the page of the trial', () => {
    const { pieces } = resolved(
      'autumn-lettuce-2025',
      '<Value of="mean" where="cultivar=cobalt-wren" interval="no" />',
    );
    // 131 g / 28.349523125 g = 4.62 oz, by hand.
    expect(pieces).toEqual([
      {
        kind: 'words',
        words: [{ metric: '131\u00a0g', us: '4.6\u00a0oz' }],
        path: 'trials/autumn-lettuce-2025/#working-1-per-plant-set',
        behind: [],
      },
    ]);
  });

  it('gives no interval where the findings have none', () => {
    expect(resolved('four-lettuces-2024', '<Value of="mean" where="cultivar=slate-egret" />').text).toBe(
      '158 g',
    );
  });

  it('gives no interval of the adjusted mean to a plain mean that differs from it', () => {
    const id = 'spring-lettuce-2026';
    const where = 'where="cultivar=russet-plover" digits="1"';
    expect(resolved(id, `<Value of="mean" ${where} />`).text).toBe('155.2 g');
    expect(resolved(id, `<Value of="adjusted_mean" ${where} />`).text).toMatch(/^154\.9 g \(95% interval /);
  });

  it.each([
    ['autumn-lettuce-2025', 'of="plants_set"', '36'],
    ['autumn-lettuce-2025', 'of="plants_dead"', '1'],
    ['autumn-lettuce-2025', 'of="all_containers"', '4'],
    ['autumn-lettuce-2025', 'of="replicates" where="cultivar=slate-egret"', '4'],
    ['solution-strength-2026', 'of="replicates" where="strength=1.5"', '3'],
    ['solution-strength-2026', 'of="n" where="strength=1.5"', '24'],
    ['plants-per-pot-2024', 'of="n" where="plants_per_pot=2" per="pot"', '8'],
    ['autumn-lettuce-2025', 'of="yield" where="cultivar=russet-plover" digits="2"', '3.03 kg/m²'],
    ['autumn-lettuce-2025', 'of="percent_of_check" where="cultivar=russet-plover"', '139%'],
    ['sweet-basil-2025', 'of="plants_no_regrowth"', '2'],
  ])('says of %s, asked for %s, %s', (id, attributes, expected) => {
    expect(resolved(id, `<Value ${attributes} />`)).toMatchObject({ text: expected, problems: [] });
  });

  it('gives the reason where the findings hold nothing', () => {
    const { problems, pieces } = resolved(
      'plants-per-pot-2024',
      '<Value of="mean" per="plant_set" where="plants_per_pot=2" />',
    );
    expect(pieces).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ rule: 'sheet-no-value', line: 1, column: 8 });
  });

  it('asks for a treatment where there are several, and names them', () => {
    const [problem] = resolved('plants-per-pot-2024', '<Value of="mean" />').problems;
    expect(problem!.message).toBe(
      'Value needs one treatment in where; there are plants_per_pot=1; plants_per_pot=2; plants_per_pot=3',
    );
  });
});

describe('Difference', () => {
  const autumnPair = (a: string, b: string) =>
    resolved('autumn-lettuce-2025', `<Difference a="cultivar=${a}" b="cultivar=${b}" />`).text;

  it('tells the comparison with the check by Dunnett, in either direction', () => {
    const entry = inferenceOf('autumn-lettuce-2025', 'per_plant_set').against_check.find(
      ({ treatment }) => treatment['cultivar'] === 'russet-plover',
    )!;
    const limits = [entry.lower!, entry.upper!].map((limit) => limit.toFixed(0));
    const p = entry.p_adjusted!.toFixed(3);
    const words = (direction: string) =>
      `${entry.estimate!.toFixed(0)} g ${direction} (95% interval ${limits.join(' to ')} g, adjusted p = ${p})`;
    expect(autumnPair('russet-plover', 'cobalt-wren')).toBe(words('more'));
    expect(autumnPair('cobalt-wren', 'russet-plover')).toBe(words('less'));
  });

  it('tells other pairs by Tukey and Kramer', () => {
    const pair = inferenceOf('autumn-lettuce-2025', 'per_plant_set').differences.find(
      ({ a, b }) => a['cultivar'] === 'russet-plover' && b['cultivar'] === 'slate-egret',
    )!;
    expect(autumnPair('russet-plover', 'slate-egret')).toContain(
      `adjusted p = ${pair.p_adjusted!.toFixed(3)}`,
    );
  });

  it('says where an interval spans zero that the two were not told apart', () => {
    expect(autumnPair('slate-egret', 'cobalt-wren')).toMatch(
      /^2 g more \(not told apart: 95% interval −38 to 43 g/,
    );
  });

  it('says of a trial that tested nothing that it did not test, and gives neither interval nor p', () => {
    const { text } = resolved(
      'four-lettuces-2024',
      '<Difference a="cultivar=russet-plover" b="cultivar=umber-dotterel" />',
    );
    expect(text).toBe('45 g more (not tested)');
  });

  it('never prints a difference as nothing that is something', () => {
    const { pieces } = resolved(
      'spring-lettuce-2026',
      '<Difference a="cultivar=russet-plover" b="cultivar=cobalt-wren" />',
    );
    expect(JSON.stringify(pieces)).not.toMatch(/"(?:0|0\.0+)\u00a0(?:g|oz)"/);
  });

  it('tells each cut by itself', () => {
    const of = (cut: string) =>
      resolved(
        'sweet-basil-2025',
        `<Difference a="cultivar=gilt-siskin" b="cultivar=fen-linnet" cut="${cut}" />`,
      ).text;
    expect(of('1')).toMatch(/^12 g more \(95%/);
    expect(of('2')).toMatch(/^10 g less \(95% interval 2 to 19 g/);
    expect(of('all')).toMatch(/^0\.6 g more \(not told apart|^1 g more \(not told apart/);
  });
});

describe('a sheet across trials', () => {
  const top = '---\ntrials: [autumn-lettuce-2025, spring-lettuce-2026]\n---\n\n';

  it('takes each number from the trial that it names', () => {
    const value = (id: string) =>
      `<Value trial="${id}" of="mean" where="cultivar=cobalt-wren" interval="no" />`;
    const { text } = resolved(null, `${top}${value('autumn-lettuce-2025')} ${value('spring-lettuce-2026')}`);
    expect(text).toBe('131 g 156 g');
  });

  it('says in the title of a figure which trial it is of', () => {
    const { pieces } = resolved(null, `${top}<WeightsByTreatment trial="spring-lettuce-2026" />`);
    const [piece] = pieces;
    expect(piece?.kind === 'figures' && piece.figures[0]!.title).toMatch(
      /^The same three lettuces the next spring: /,
    );
  });

  it('needs the trial to be named where there are several, and to be among those at its top', () => {
    const rulesOf = (text: string) => resolved(null, top + text).problems.map(({ rule }) => rule);
    expect(rulesOf('<Value of="plants_set" />')).toEqual(['sheet-missing-attribute']);
    expect(rulesOf('<Value of="plants_set" trial="sweet-basil-2025" />')).toEqual(['sheet-unknown-name']);
    expect(rulesOf('<Value of="plants_set" trial="spring-lettuce-2062" />')).toEqual(['sheet-unknown-name']);
  });

  it('is silent of a trial that has errors of its own, which are reported already', () => {
    const { problems } = resolved(null, '---\ntrials: [trial-with-errors]\n---\n\n<Value of="plants_set" />');
    expect(problems).toEqual([]);
  });
});

describe('a link within the site', () => {
  const messages = (to: string) =>
    resolved('autumn-lettuce-2025', `See [there](${to}).`).problems.map(({ message }) => message);

  it('leads to a page that there is', () => {
    for (const to of [
      '/',
      '/methods/#position',
      '/trials/sweet-basil-2025/',
      '/trials/sweet-basil-2025',
      '/data/all-weights.csv',
      'https://example.org/nowhere/',
      '/fact-sheets/lettuce-in-still-water/',
    ])
      expect(messages(to), to).toEqual([]);
  });

  it('is a problem where it leads to none, with the nearest', () => {
    expect(messages('/trials/sweet-basil-2026/')).toEqual([
      'this site has no page "/trials/sweet-basil-2026/"; did you mean "/trials/sweet-basil-2025/"?',
    ]);
  });
});

describe('a link within the page', () => {
  const messages = (to: string) =>
    resolved(
      'autumn-lettuce-2025',
      `# What we asked\n\n## Café\n\nSee [there](${to}).\n\n<PositionMap container="T1" />`,
    ).problems.map(({ message }) => message);

  it('leads to a heading or a figure of it', () => {
    for (const to of ['#what-we-asked', '#cafe', '#content', '#position-map-t1'])
      expect(messages(to), to).toEqual([]);
  });

  it('is a problem where it leads to none, with the nearest', () => {
    expect(messages('#what-we-aksed')).toEqual([
      'the sheet has no heading "#what-we-aksed"; did you mean "#what-we-asked"?',
    ]);
    expect(messages('#no-such-heading-at-all')).toEqual([
      'the sheet has no heading "#no-such-heading-at-all"; its headings are #what-we-asked, #cafe',
    ]);
    expect(messages('#%zz')).toHaveLength(1);
  });

  it('is a problem where the sheet has no headings', () => {
    expect(resolved('autumn-lettuce-2025', '[x](#y)').problems.map(({ message }) => message)).toEqual([
      'the sheet has no heading "#y"; it has no headings at all',
    ]);
  });
});

describe('the other components', () => {
  it('compare seasons in the sentence of the page of the crop', () => {
    const { text, problems } = resolved(
      'autumn-lettuce-2025',
      '<SeasonComparison measure="per_plant_set" show="answer" />',
    );
    expect(problems).toEqual([]);
    expect(text).toMatch(/^Russet Plover gave the most fresh weight per plant set, /);
  });

  it('say a day as the trial has it', () => {
    expect(resolved('sweet-basil-2025', '<Day of="cut" cut="1" />').text).toBe('3 July 2025');
    expect(resolved('sweet-basil-2025', '<Day of="cut" />').text).toBe('4 August 2025');
  });

  it('cite a trial by title and version in a sentence, and in full on lines of their own', () => {
    expect(resolved('autumn-lettuce-2025', 'See <Citation />.').text).toBe(
      'Three autumn lettuces in four tanks (version 1.1.0)',
    );
    expect(resolved('autumn-lettuce-2025', '<Citation />').pieces).toMatchObject([{ kind: 'citation' }]);
  });

  it('show one container’s map, or all', () => {
    const count = (attributes: string) => {
      const [piece] = resolved('autumn-lettuce-2025', `<PositionMap ${attributes}/>`).pieces;
      return piece?.kind === 'figures' ? piece.figures.map(({ id }) => id) : [];
    };
    expect(count('')).toHaveLength(4);
    expect(count('container="T3" ')).toEqual(['position-map-t3']);
  });
});

describe('every component', () => {
  it('has a name and a meaning, and attributes that each say what they mean', () => {
    expect(new Set(sheetComponents.map(({ name }) => name)).size).toBe(sheetComponents.length);
    for (const { name, meaning, attributes } of sheetComponents) {
      expect(name).toMatch(/^[A-Z][A-Za-z]+$/);
      expect(meaning).toMatch(/\.$/);
      for (const attribute of attributes) expect(attribute.meaning).toMatch(/\.$/);
      expect(new Set(attributes.map((each) => each.name)).size).toBe(attributes.length);
    }
  });

  it('has an example from the demo that works', () => {
    for (const { component, shown } of componentExamples(demo)) {
      expect(shown, component.name).not.toBeNull();
      expect(shown!.source).toContain(`<${component.name}`);
    }
  });

  it('is written in the language of its sheet', () => {
    const spanish = inLanguage('es', () =>
      resolved('autumn-lettuce-2025', '<Difference a="cultivar=russet-plover" b="cultivar=cobalt-wren" />'),
    );
    expect(spanish.text).not.toContain('more');
    expect(spanish.text).toContain('0,020');
  });
});

describe('a link to a file of this site', () => {
  const messages = (to: string): string[] => {
    const { sheet } = readFactSheet(`[x](${to})`, 'trials/autumn-lettuce-2025/factsheet.mdx');
    const items = demo.trials.map((item) =>
      item === autumn ? { ...item, trial: { ...item.trial, factSheets: [sheet!] } } : item,
    );
    const library: Library = { ...demo, factSheets: [], trials: items };
    const page = sheetPages(library).find(({ sheet: each }) => each === sheet)!;
    const { files } = filesPublished(library);
    const faulty = new Set(['trial-with-errors']);
    return fileLinkProblems(page, library, faulty, false, files!).map(({ message }) => message);
  };

  it.each([
    '/data/autumn-lettuce-2025/weights.csv',
    '/data/autumn-lettuce-2025/weights.csv?x=1#y',
    '/data/all-weights.csv',
    '/feed.xml',
    '/trials/autumn-lettuce-2025/fact-sheet/fact-sheet-a4.pdf',
    '/trials/autumn-lettuce-2025/',
    '/data/trial-with-errors/weights.csv',
    'https://example.org/data/no.csv',
  ])('may lead to %s', (to) => {
    expect(messages(to)).toEqual([]);
  });

  it.each([
    ['/trials/autumn-lettuce-2025/harvest.csv', '; did you mean "/data/autumn-lettuce-2025/harvest.csv"?'],
    ['/data/autumn-lettuce-2025/trial.yaml', '; did you mean "/data/autumn-lettuce-2025/trial.json"?'],
    ['/data/autumn-lettuce-2025/what-is-this.docx', '; the page /data/autumn-lettuce-2025/ lists the files'],
    ['/data/autumn-letuce-2025/weights.csv', '; did you mean "autumn-lettuce-2025"?'],
    ['/data/all-wieghts.csv', '; did you mean "/data/all-weights.csv"?'],
    [
      '/trials/autumn-lettuce-2025/photos/99-480.jpg',
      '; the page /data/autumn-lettuce-2025/ lists the files',
    ],
    ['/data/autumn-lettuce-2025/%zz.csv', '; the page /data/autumn-lettuce-2025/ lists the files'],
  ])('is a problem where %s leads to none', (to, meant) => {
    expect(messages(to)).toEqual([`this site publishes no file "${to}"${meant}`]);
  });
});
