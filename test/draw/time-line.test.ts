import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { cutsOf } from '../../src/draw/cut-lines.ts';
import { drawTimeLine, hasSeveralDays } from '../../src/draw/time-line.ts';
import { waterUsed } from '../../src/compute/water/water-used.ts';
import { yieldsOf } from '../../src/compute/yields.ts';
import { drawWaterOverTime, waterUsedUpTo } from '../../src/draw/water-over-time.ts';
import type { Trial } from '../../src/model/trial.ts';
import { blockTrial } from '../support/example-trial.ts';
import { without } from '../../src/model/without.ts';
import { everyElement, parseXml, withClass } from '../support/xml.ts';

const trial = blockTrial();
const figure = drawTimeLine(trial)!;
const root = parseXml(figure.svg);
const share = (text: string | undefined) => Number(text!.replace('%', ''));

describe('the time line', () => {
  const leaders = withClass(root, 'milestone').map((group) => ({
    what: withClass(group, 'strong')[0]!.text,
    day: withClass(group, 'tick')[0]!.text.replace('\u00A0', ' '),
    x: share(withClass(group, 'leader')[0]!.attributes['x1']),
    top: Number(withClass(group, 'leader')[0]!.attributes['y1']),
  }));
  const of = (what: string) => leaders.find((leader) => leader.what === what)!;

  it('places days in proportion', () => {
    // From 25 August: 4 days to germination, 18 to transplanting, 56 to the cut.
    const length = of('cut').x - of('sown').x;
    expect((of('germinated').x - of('sown').x) / length).toBeCloseTo(4 / 56, 3);
    expect((of('transplanted').x - of('sown').x) / length).toBeCloseTo(18 / 56, 3);
    expect(of('transplanted').day).toBe('12 Sep');
  });

  it('sets a label above a later one that stands close', () => {
    expect(of('sown').top).toBeLessThan(of('germinated').top);
    expect(of('germinated').top).toBeLessThan(of('transplanted').top);
  });

  it('gives the events drawings of their own where no printed page holds the whole', () => {
    const events = Array.from({ length: 30 }, (_, index) => ({
      date: `2025-10-${String(1 + (index % 19)).padStart(2, '0')}`,
      what: `Entry ${String(index + 1)} of a long notebook, with more to say than one line holds`,
    }));
    const { svg } = drawTimeLine({ ...trial, metadata: { ...trial.metadata, events } })!;
    const parts = parseXml(`<div>${svg}</div>`).children;
    expect(parts.length).toBeGreaterThan(2);
    const heights = parts.map(({ attributes }) => Number(attributes['height']));
    expect(heights.filter((height) => height > 800)).toEqual([]);
    // Whole entries, each once, none in the drawing of the line itself but its mark.
    expect(parts[0]!.text).not.toContain('notebook');
    const entries = parts.slice(1).map((part) => withClass(part, 'event').map(({ text }) => text));
    expect(entries.flat()).toEqual(events.map((_, index) => String(index + 1)));
    const ids = parts.map((part) => part.attributes['aria-labelledby']!.split(' ')[0]);
    expect(new Set(ids).size).toBe(parts.length);
  });

  describe('with more readings than a printed page holds', () => {
    const [tank] = trial.metadata.containers;
    const ids = Array.from({ length: 12 }, (_, index) => `T${String(index + 1)}`) as [string, ...string[]];
    const containers = ids.map((name) => ({ ...tank, id: name })) as [typeof tank];
    const [reading] = trial.readings;
    const readings = ids.flatMap((container) =>
      ['2025-09-12', '2025-10-20'].map((date) => ({
        ...reading!,
        ...{ date, container, level: 9, ec: 1.2, ph: 6, temperature: 14 },
      })),
    );
    const partsOf = (events: { date: string; what: string }[]) => {
      const metadata = { ...trial.metadata, containers, events };
      return parseXml(`<div>${drawTimeLine({ ...trial, metadata, readings })!.svg}</div>`).children;
    };
    const kindsOf = (parts: ReturnType<typeof partsOf>) =>
      parts.map((part) => withClass(part, 'panel').map(({ attributes }) => attributes['data-reading']));

    it('gives the readings drawings of their own, of whole panels', () => {
      const parts = partsOf([{ date: '2025-10-02', what: 'Slugs' }]);
      const heights = parts.map(({ attributes }) => Number(attributes['height']));
      expect(heights.filter((height) => height > 800)).toEqual([]);
      const kinds = kindsOf(parts);
      expect(kinds[0]).toEqual([]);
      expect(kinds.flat()).toEqual(['level', 'ec', 'ph', 'temperature']);
      // The words stand with the marks they belong to, and each part has the months and the day of the cut.
      expect(parts[0]!.text).toContain('Slugs');
      for (const part of parts.slice(1)) {
        expect(part.text).toContain('Oct');
        expect(withClass(part, 'cut-day')).toHaveLength(1);
        for (const dot of withClass(part, 'dot'))
          expect(Number(dot.attributes['cy'])).toBeLessThan(Number(part.attributes['height']) - 22);
      }
      const names = parts.map((part) => part.attributes['aria-labelledby']!.split(' ')[0]);
      expect(new Set(names).size).toBe(parts.length);
    });

    it('draws the lines of very many containers in several panels on one scale, in no drawing too tall', () => {
      const many = Array.from({ length: 90 }, (_, index) => `T${String(index + 1)}`) as [string, ...string[]];
      const level = { ...reading!, ec: null, ph: null, temperature: null };
      const of = {
        ...trial,
        metadata: {
          ...trial.metadata,
          containers: many.map((name) => ({ ...tank, id: name })) as [typeof tank],
        },
        readings: many.flatMap((container, index) => [
          { ...level, date: '2025-09-12', container, level: 12 },
          { ...level, date: '2025-10-20', container, level: 11 - index / 10 },
        ]),
      };
      for (const svg of [drawTimeLine(of)!.svg, drawWaterOverTime(of)!.svg]) {
        const parts = parseXml(`<div>${svg}</div>`).children;
        const heights = parts.map(({ attributes }) => Number(attributes['height']));
        expect(heights.filter((height) => height > 800)).toEqual([]);
        const panels = parts.flatMap((part) => withClass(part, 'panel'));
        expect(panels.length).toBeGreaterThan(1);
        expect(panels.map((panel) => withClass(panel, 'strong')[0]!.text)).toEqual([
          expect.stringContaining('T1 to T30'),
          expect.stringContaining('T31 to T60'),
          expect.stringContaining('T61 to T90'),
        ]);
        const lines = panels.flatMap((panel) => withClass(panel, 'line'));
        expect(lines.map(({ attributes }) => attributes['data-container'])).toEqual(many);
        const marks = panels.map((panel) =>
          withClass(panel, 'tick').flatMap(({ text, attributes }) => (attributes['x'] === '0' ? [text] : [])),
        );
        expect(marks[1]).toEqual(marks[0]);
      }
    });

    it('has the words of many events apart from both', () => {
      const parts = partsOf(
        Array.from({ length: 40 }, (_, index) => ({
          date: `2025-10-${String(1 + (index % 19)).padStart(2, '0')}`,
          what: `Entry ${String(index + 1)}`,
        })),
      );
      const heights = parts.map(({ attributes }) => Number(attributes['height']));
      expect(heights.filter((height) => height > 800)).toEqual([]);
      expect(kindsOf(parts).flat()).toEqual(['level', 'ec', 'ph', 'temperature']);
      expect(parts[0]!.text).not.toContain('Entry');
      expect(parts.slice(1).flatMap((part) => withClass(part, 'event'))).toHaveLength(40);
    });
  });

  it('numbers the events and gives their words', () => {
    expect(root.text).toContain('20\u00A0Sep (T2): Slugs on two plants');
    expect(withClass(root, 'event')).toHaveLength(4);
  });

  it('draws a panel for each kind that was read, each reading a dot at its height', () => {
    const panels = withClass(root, 'panel');
    expect(panels.map(({ attributes }) => attributes['data-reading'])).toEqual(['level', 'ec', 'ph']);
    // Read off the panel's own ticks: the level of T1 fell from 9.0 to 4.4 cm.
    const ticks = panels[0]!.children
      .filter(
        ({ name, attributes }) =>
          name === 'text' && attributes['class'] === 'tick' && attributes['x'] === '0',
      )
      .map(({ text, attributes }) => ({ value: Number(text), y: Number(attributes['y']) - 4 }));
    const [low, high] = [ticks[0]!, ticks.at(-1)!];
    const value = (y: number) => low.value + ((y - low.y) * (high.value - low.value)) / (high.y - low.y);
    const dots = withClass(withClass(panels[0]!, 'line')[0]!, 'dot').map(({ attributes }) =>
      value(Number(attributes['cy'])),
    );
    for (const [index, level] of [9, 7.4, 6.2, 4.4].entries()) expect(dots[index]).toBeCloseTo(level, 1);
  });

  it('marks the day of each cut down all panels of readings', () => {
    const [cut, ...more] = withClass(root, 'cut-day');
    expect(more).toEqual([]);
    expect(share(cut!.attributes['x1'])).toBeCloseTo(of('cut').x, 6);
    const dots = withClass(root, 'dot').map(({ attributes }) => Number(attributes['cy']));
    expect(Number(cut!.attributes['y1'])).toBeLessThan(Math.min(...dots));
    expect(Number(cut!.attributes['y2'])).toBeGreaterThanOrEqual(Math.max(...dots));
    expect(withClass(parseXml(drawTimeLine({ ...trial, readings: [] })!.svg), 'cut-day')).toEqual([]);
  });

  it('has a table twin with every day, event and reading', () => {
    expect(figure.table.columns.map(({ heading }) => heading)).toEqual([
      'Day',
      'Where',
      'What',
      'Water level (cm)',
      'EC (mS/cm at 25 °C)',
      'pH',
    ]);
    expect(figure.table.rows).toHaveLength(4 + 2 + 8);
    expect(
      figure.table.rows.some(
        (row) => row.join('|').replaceAll('\u00A0', ' ') === '26 September 2025|T1||7.4|1.4|6.4',
      ),
    ).toBe(true);
  });

  it('is null where no day is known, and draws a single day', () => {
    const bare = without(trial.metadata, 'dates', 'events');
    expect(drawTimeLine({ ...trial, metadata: bare, readings: [] })).toBeNull();
    const one = drawTimeLine({
      ...trial,
      metadata: { ...bare, dates: { sown: '2025-08-25' } },
      readings: [],
    })!;
    expect(plainText(one.description)).toBe('Sown on 25\u00A0August\u00A02025.');
    expect(one.svg).not.toMatch(/NaN|Infinity/);
  });

  it('knows a trial of a single day, whose line is a stroke', () => {
    const dated = (dates: object, readings: Trial['readings']) =>
      hasSeveralDays({ ...trial, metadata: { ...without(trial.metadata, 'events'), dates }, readings });
    expect(dated({ sown: '2025-08-25' }, [])).toBe(false);
    expect(dated({ sown: '2025-08-25', germinated: '2025-08-25' }, [])).toBe(false);
    expect(dated({ sown: '2025-08-25', cuts: ['2025-10-02'] }, [])).toBe(true);
    expect(dated({ sown: '2025-08-25' }, trial.readings)).toBe(true);
  });
});

describe('water over time', () => {
  it('ends at the water that the findings give each container', () => {
    const found = waterUsed(trial, yieldsOf(trial, 'all'));
    for (const container of trial.metadata.containers) {
      const used = found.find((each) => each.container === container.id)!.used_L!;
      expect(waterUsedUpTo(container, trial).at(-1)!.value).toBeCloseTo(used, 10);
    }
    // By hand for T1: 0.87 m x 0.57 m x 10 L/cm x (9.0 - 4.4) cm + 8 L = 30.81 L
    expect(waterUsedUpTo(trial.metadata.containers[0], trial).at(-1)!.value).toBeCloseTo(30.8114, 4);
    expect(drawWaterOverTime(trial)!.table.rows.at(3)).toEqual([
      'T1',
      '20\u00A0October\u00A02025',
      '30.8',
      '8.14',
    ]);
  });

  it('is read in US gallons where those were chosen', () => {
    const panel = withClass(parseXml(drawWaterOverTime(trial)!.svg), 'panel')[0]!;
    const [heads, levels] = [
      withClass(panel, 'strong').map(({ text, attributes }) => [attributes['class'], text]),
      withClass(panel, 'when-chosen').find(({ name }) => name === 'g')!,
    ];
    expect(heads).toEqual([
      ['strong metric', 'water used (L)'],
      ['strong when-chosen', 'water used (US gal)'],
    ]);
    const marks = levels.children
      .filter(({ name }) => name === 'text')
      .map(({ text, attributes }) => ({ gallons: Number(text), y: Number(attributes['y']) - 4 }));
    const [low, high] = [marks[0]!, marks.at(-1)!];
    const dots = withClass(withClass(panel, 'line')[0]!, 'dot').map(({ attributes }) =>
      Number(attributes['cy']),
    );
    expect(low.gallons).toBe(0);
    // The first reading of all is where nothing was used yet; T1 had used 30.8114 L, or 8.1395 US gal, by the last.
    expect(dots[0]!).toBeCloseTo(low.y, 1);
    const gallons = low.gallons + ((dots.at(-1)! - low.y) * (high.gallons - low.gallons)) / (high.y - low.y);
    expect(gallons).toBeCloseTo(30.8114 / 3.785411784, 1);
  });

  it('counts rain and overflow between two readings', () => {
    const [first, second] = trial.readings.filter(({ container }) => container === 'T1');
    const rainy = {
      ...trial,
      readings: [
        { ...first!, rain: 99 },
        { ...second!, rain: 3, overflow: 1 },
      ],
    };
    // 0.87 x 0.57 x 10 x 1.6 + 3 - 1; the rain before the first level does not count
    expect(waterUsedUpTo(trial.metadata.containers[0], rainy).at(-1)!.value).toBeCloseTo(9.9344, 10);
  });

  it('marks the cuts by name, a cut after the last reading too', () => {
    const dates = { ...trial.metadata.dates, cuts: ['2025-10-20', '2025-11-20'] as [string, ...string[]] };
    const twice = parseXml(drawWaterOverTime({ ...trial, metadata: { ...trial.metadata, dates } })!.svg);
    const places = withClass(twice, 'cut-day').map(({ attributes }) => share(attributes['x1']));
    // Of 69 days from the first reading, the first cut is on the 38th and the second on the last.
    const first = withClass(twice, 'dot').map(({ attributes }) => share(attributes['cx']))[0]!;
    expect((places[0]! - first) / (places[1]! - first)).toBeCloseTo(38 / 69, 3);
    expect(twice.text).toMatch(/cut 1.*cut 2/);
  });

  it('marks the days on which containers were cut by themselves, unless they are many', () => {
    const daysOf = (days: readonly string[]) =>
      cutsOf({ ...trial, harvest: days.map((date) => ({ ...trial.harvest[0]!, date })) });
    expect(daysOf(['2025-10-11', '2025-10-20', '2025-10-11'])).toEqual(['2025-10-11', '2025-10-20']);
    expect(daysOf(Array.from({ length: 9 }, (_, index) => `2025-10-1${index}`))).toEqual(['2025-10-20']);
  });

  it('is null without an inside measure or with one level', () => {
    const open = without(trial.metadata.containers[0], 'inside');
    const metadata = { ...trial.metadata, containers: [open] as [typeof open] };
    expect(drawWaterOverTime({ ...trial, metadata })).toBeNull();
    expect(drawWaterOverTime({ ...trial, readings: trial.readings.slice(0, 2) })).toBeNull();
    expect(everyElement(parseXml(drawWaterOverTime(trial)!.svg)).length).toBeGreaterThan(10);
  });
});
