const cuts = ['2025-10-20', '2025-10-30', '2025-11-09', '2025-11-19'];

/** A sound trial cut four times, with so many rows in harvest.csv, as texts: 10 containers, 5 cultivars. */
export function largeTrial(rows: number, seed: number): Map<string, string> {
  const columns = 100;
  const height = Math.ceil(rows / cuts.length / containers / columns);
  const random = seeded(seed);
  const places = Array.from({ length: containers * height * columns }, (_, at) => {
    const container = 1 + Math.floor(at / height / columns);
    const place = `T${container},${1 + (Math.floor(at / columns) % height)},${1 + (at % columns)}`;
    return { place, cultivar: 1 + Math.floor(random() * 5) };
  });
  const layout = places.map(({ place, cultivar }) => `${place},c${cultivar}`);
  const harvest = cuts.flatMap((date, index) =>
    places.map(({ place, cultivar }) => {
      const weight = Math.round(100 + 10 * cultivar + 40 * (random() + random() + random()));
      const isLost = random() < 0.02;
      const remark = random() < 0.05 ? 'slug holes' : '';
      return `${place},${index + 1},${date},${isLost ? '' : weight},${isLost ? 'not weighed' : ''},${remark}`;
    }),
  );
  return new Map([
    ['trial.yaml', trialYaml(height, columns)],
    ['layout.csv', ['container,row,column,cultivar', ...layout, ''].join('\n')],
    ['harvest.csv', ['container,row,column,cut,date,fresh_weight,status,remark', ...harvest, ''].join('\n')],
  ]);
}

const containers = 10;

/** Numbers in [0, 1), always the same for the same seed: Marsaglia's xorshift on 32 bits (2003), 13-17-5. */
function seeded(seed: number): () => number {
  let state = seed | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

const trialYaml = (rows: number, columns: number) => `title: A large generated trial
version: 1.0.0
status: finished
question: How long does the check of very many rows take?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: 2025, name: autumn}
dates: {sown: 2025-08-25, transplanted: 2025-09-12, cuts: [${cuts.join(', ')}]}
site: {name: Generated, country: IE, setting: greenhouse}
people: [{name: Nobody, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    levels: [{id: c1}, {id: c2}, {id: c3}, {id: c4}, {id: c5}]
    check: c1
design: {arrangement: completely randomised, allotted: position, randomised: true}
containers:
${Array.from({ length: containers }, (_, index) => `  - {id: T${index + 1}, kind: bed, rows: ${rows}, columns: ${columns}}`).join('\n')}
variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1, lowest: 1, highest: 600}
releases:
  - {version: 1.0.0, date: 2025-11-22, note: First release.}
`;
