import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { answerOf, help } from '../../src/commands/import-answers.ts';
import { importOptions } from '../../src/commands/import-options.ts';
import { conversation } from '../../src/commands/import.ts';
import { progressOf } from '../../src/commands/progress.ts';
import { askYes } from '../../src/commands/talk.ts';
import { usage } from '../../src/commands/usage.ts';
import { inLanguage, writeIn } from '../../src/model/language.ts';
import '../../src/model/messages.ts';
import { say } from '../../src/model/say.ts';
import type { Workbook } from '../../src/model/workbook.ts';
import { sha256 } from '../../src/read/sha256.ts';
import { readWorkbook } from '../../src/read/workbook.ts';
import { writeContent } from '../support/other-site.ts';
import { runCommand } from '../support/site.ts';
import { xlsxFile } from '../support/spreadsheets.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { goodFiles } from '../check/good-folder.ts';

const shared = {
  site: 'title: Ensayos\nurl: https://example.org/\npublisher: Huerto\nlicence: CC0-1.0\nlanguage: es\n',
  cultivars:
    '- {id: cobalt-wren, name: Cobalt Wren}\n- {id: slate-egret, name: Slate Egret}\n- {id: russet-plover, name: Russet Plover}\n',
};

/** Words that stand in nearly every English sentence, and in no Spanish one. */
const english = /\b(?:the|is|are|was|of|to|and|with|there|from|found|until|such|missing|written)\b/i;

/** A small content folder in Spanish with one finished trial, and the commands run on it. */
async function spanishSite() {
  const content = await temporaryFolder();
  await writeContent(content, shared, { 'dos-lechugas': goodFiles() });
  const trial = join(content, 'trials', 'dos-lechugas');
  return {
    content,
    trial,
    /** What a command prints, without the usage, which is English everywhere. */
    run: async (args: string[], env: Record<string, string> = {}) => {
      const { code, output } = await runCommand(args, {
        TANKSIDE_CONTENT: content,
        TANKSIDE_TODAY: '2026-11-25',
        ...env,
      });
      const text = output.replace(`\n${usage}`, '');
      expect(text).not.toMatch(english);
      return { code, text };
    },
  };
}

/** A tank of four plants, one of them with a sign for its weight. */
const rows = [
  ['Otoño'],
  ['Tanque', 'Fila', 'Columna', 'Variedad', 'Peso, oz'],
  ['T1', 1, 1, 'Cobalt Wren', 6.25],
  ['T1', 1, 2, 'Slate Egret', 5.5],
  ['T1', 2, 1, 'Slate Egret', 7],
  ['T1', 2, 2, 'Cobalt Wren', 'x'],
];
const answers = [
  ...['--crop', 'Lechuga', '--harvested', '2025-10-20', '--season', 'otoño'],
  ...['--setting', 'greenhouse', '--allot', 'position', '--randomised'],
];

afterEach(() => {
  writeIn('en');
});

describe('On a site in Spanish', () => {
  test('check and build tell of a fault, and build that nothing was published', async () => {
    const { trial, run } = await spanishSite();
    const harvest = await readFile(join(trial, 'harvest.csv'), 'utf8');
    await writeFile(join(trial, 'harvest.csv'), harvest.replace(',131,', ',l31,'));
    const place = 'trials/dos-lechugas/harvest.csv:2:8  error  weight-not-a-number  ';
    const checked = await run(['check']);
    expect(checked.text).toMatch(
      new RegExp(`^${place}.*no es un número; .*\\n1 error, 0 avisos, 0 notas\\n$`),
    );
    expect((await run(['check', '--github'])).text).toContain('::"l31" no es un número; ');
    expect(await run(['build'])).toEqual({
      code: 1,
      text: `${checked.text}No se ha publicado nada: corrija los errores de arriba y vuelva a construir el sitio.\n`,
    });
    expect((await run(['release', trial])).text).toContain(
      '\nNo se ha publicado ninguna versión: corrija antes los errores de arriba.\n',
    );
  });

  test('plan asks for what is missing, proposes, and says what it wrote', async () => {
    const { content, run } = await spanishSite();
    expect((await run(['plan'])).text).toBe('Falta --crop, por ejemplo --crop "Lechuga".\n');
    const options = [
      ...['plan', '--question', '¿Igualan las nuevas al testigo?', '--crop', 'Lettuce', '--season'],
      ...['primavera 2027', '--factor', 'cultivar=cobalt-wren,russet-plover', '--allot', 'position'],
    ];
    expect((await run([...options, '--container', 'T1'])).text).toBe(
      '--container es un identificador, filas x columnas y, si acaso, @ y un bloque, como T1=3x4@1; se ha escrito "T1".\n',
    );
    const folder = join(content, 'trials', 'primavera-2027');
    const { code, text } = await run([...options, '--container', 'T1=3x3', '--container', 'T2=3x3', folder]);
    expect(code).toBe(0);
    expect(text).toMatch(/^1\. Completamente al azar, sorteo por posiciones \(18 plantas, semilla \d+\)\n/);
    expect(text).toContain(
      `\nLa propuesta 1 se ha escrito en ${folder}.\nLo que aquí no se dijo está como en dos-lechugas: repase trial.yaml.\n`,
    );
    expect((await run(['findings', folder])).text).toBe(
      'El ensayo está planificado: no tiene resultados hasta que termine.\n',
    );
    expect((await run(['sheet', folder])).text).toBe(
      'El ensayo está planificado: no hay nada que contar hasta que termine.\n',
    );
  });

  test('import shows a spreadsheet, tells what is missing, and writes', async () => {
    const { content, run } = await spanishSite();
    const sheet = join(content, 'pesos.xlsx');
    const folder = join(content, 'trials', 'otono-2025');
    await writeFile(sheet, xlsxFile([{ name: 'Cosecha', rows }]));
    expect((await run(['import', sheet])).text).toBe(
      'La carpeta es nueva: falta --crop, por ejemplo --crop "Lechuga".\n',
    );
    const refused = await run(['import', sheet, folder, ...answers, '--column', 'Z=nada']);
    expect(refused.text).toMatch(/^"nada" no es nada que pueda ser una columna; puede ser container, row, /);
    const { code, text } = await run(['import', sheet, folder, ...answers, '--word', 'x=dead', '--write']);
    expect(code).toBe(0);
    expect(text).toMatch(/^Hoja Cosecha: encabezados en 2, datos en 3 a 6\n/);
    expect(text).toContain('\n4 filas a partir de 25 celdas; 1 celda no se usa:\n');
    expect(text).toContain('\nSe ha escrito: trial.yaml, layout.csv, harvest.csv, source/pesos.xlsx, ');
    expect(await readFile(join(folder, 'trial.yaml'), 'utf8')).toContain(
      'question: "¿Cuánto rinde cada cultivar de Lechuga?"',
    );
  });

  test('import asks at a terminal, and takes yes with its accent and without', async () => {
    writeIn('es');
    const bytes = xlsxFile([{ name: 'Cosecha', rows }]);
    const given = {
      name: 'pesos.xlsx',
      bytes,
      sha256: sha256(bytes),
      workbook: readWorkbook(bytes) as Workbook,
    };
    const options = importOptions(['pesos.xlsx', ...answers]);
    const lines = ['sí', 'ayuda', 'E=nada', 'no'];
    const asked: string[] = [];
    const out = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    const faults = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    await conversation(given, null, { answers: options.answers(), today: '2026-01-15' }, options, (text) => {
      asked.push(text);
      return Promise.resolve(lines[asked.length - 1] ?? 'no');
    });
    const text = [...out.mock.calls, ...faults.mock.calls].map(([line]) => String(line)).join('');
    out.mockRestore();
    faults.mockRestore();
    expect(asked).toHaveLength(lines.length);
    expect(asked[0]).toMatch(/^¿Escribir esto\? sí, no, o lo que ha de leerse de otro modo, /);
    expect(text).not.toMatch(english);
    expect(text).toContain('Antes hay que decir o corregir lo que se nombra arriba.\n');
    expect(text).toContain(help());
    expect(text).toContain('No se escribe nada.\n');
    expect(['sí', 'si', 'S', 'yes'].map(answerOf)).toEqual(['write', 'write', 'write', 'write']);
  });

  test('a question of yes or no takes yes without its accent', async () => {
    writeIn('es');
    const talk = { ask: () => Promise.resolve('si'), tell: () => undefined, close: () => undefined };
    expect(await askYes(talk, '¿Insistir?', false)).toBe(true);
  });

  test('release says what it froze, and why under which version', async () => {
    const { trial, run } = await spanishSite();
    expect((await run(['release', trial])).text).toBe(
      'Publicada la versión 1.0.0 de dos-lechugas (congelada tal como está).\n' +
        'Congelado en versions/1.0.0/: harvest.csv, layout.csv, trial.yaml, SHA256SUMS.\n',
    );
    expect((await run(['release', trial])).text).toBe('Falta --note: diga en una frase qué cambió.\n');
    expect((await run(['release', trial, '--note', 'Otra vez.'])).text).toBe(
      'No ha cambiado nada desde la versión 1.0.0, así que no hay nada que publicar.\n',
    );
    const harvest = await readFile(join(trial, 'harvest.csv'), 'utf8');
    await writeFile(join(trial, 'harvest.csv'), harvest.replace(',131,', ',132,'));
    expect((await run(['release', trial, '--note', 'Pesada otra vez.'])).text).toMatch(
      /^Publicada la versión 1\.1\.0 de dos-lechugas \(minor, por lo que cambió desde 1\.0\.0\)\.\n {2}harvest\.csv {2}T1 1 1 {2}fresh_weight {2}"131" -> "132"\n/,
    );
  });

  test('print, sheet, serve and gather say what they did, or why they did nothing', async () => {
    const { content, trial, run } = await spanishSite();
    expect((await run(['print', 'dos-lechugas'], { CHROME_PATH: join(content, 'none') })).text).toMatch(
      /^Para imprimir hace falta Chromium, Chrome o Edge, y no se encontró ninguno\./,
    );
    expect((await run(['sheet', trial])).text).toBe(
      `Se ha escrito ${join(trial, 'factsheet.mdx')}: léalo, haga suyas las palabras y ejecute luego check.\n`,
    );
    expect((await run(['sheet', trial])).text).toMatch(/^factsheet\.mdx ya existe y se queda como está; /);
    expect((await run(['serve'], { TANKSIDE_OUT: join(content, 'dist') })).text).toMatch(
      /^Aún no hay ningún sitio construido\./,
    );
    expect((await run(['gather'])).text).toBe(
      '0 errores, 0 avisos, 0 notas\nsite.yaml no enumera ningún sitio en gather.\n',
    );
  });

  test('how far a long piece of work has come is told in the language set by then', () => {
    const lines: string[] = [];
    const stream = { isTTY: false, write: (line: string) => lines.push(line) };
    const clock = vi.spyOn(performance, 'now').mockReturnValue(0);
    const progress = progressOf(() => say('Checking'), stream as unknown as NodeJS.WriteStream);
    clock.mockReturnValue(30_000);
    inLanguage('es', () => progress.done(1, 3));
    clock.mockReturnValue(300_000);
    progress.done(2, 3);
    clock.mockRestore();
    expect(lines).toEqual([
      'Comprobación: 1 de 3 ensayos, faltan 60 s\n',
      'Checking: 2 of 3 trials, 3 min left\n',
    ]);
  });
});
