import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'species-against-cultivar',
  severity: 'warning',
  acceptable: true,
  title: 'Species that is not its cultivars',
  meaning:
    'trial.yaml gives the crop one species, and cultivars.yaml gives a cultivar of the trial another. Cautions and comparisons go by the species.',
  example:
    'crop.species is "Ocimum basilicum", but cultivars.yaml says that slate-egret is "Lactuca sativa"; correct one of the two',
  check,
};
export default rule;

function check({ metadata, cultivars }: Facts, report: Report): void {
  const { crop, factors = [] } = metadata.draft;
  if (crop?.species === undefined || cultivars === null) return;
  const ids = factors
    .filter(({ kind }) => kind === 'cultivar')
    .flatMap(({ levels }) => levels.map(({ id }) => id));
  const grown = new Set([...ids, ...(crop.cultivar === undefined ? [] : [crop.cultivar])]);
  const others = cultivars.filter(({ id, species }) => grown.has(id) && !areAlike(crop.species!, species));
  const [first] = others;
  if (first?.species === undefined) return;
  const message = say(
    'crop.species is {species}, but cultivars.yaml says that {names} is {other}; correct one of the two',
    {
      species: showText(crop.species),
      names: others
        .filter(({ species }) => species === first.species)
        .map(({ id }) => id)
        .join(', '),
      other: showText(first.species),
    },
  );
  const place = metadata.place(['crop', 'species']);
  report(rule, { file: 'trial.yaml', place, found: crop.species, expected: first.species, message });
}

/** Genus and epithet, without the sign of a hybrid; an author, a variety or a subspecies after them is no other species. */
function nameOf(species: string): string[] {
  const words = species.trim().toLowerCase().split(/\s+/u);
  return words.filter((word) => !/^(?:×|x|sp\.|spp\.)$/u.test(word)).slice(0, 2);
}

function areAlike(a: string, b: string | undefined): boolean {
  if (b === undefined) return true;
  const [ofA, ofB] = [nameOf(a), nameOf(b)];
  return ofA.every((word, index) => ofB[index] === undefined || ofB[index] === word);
}
