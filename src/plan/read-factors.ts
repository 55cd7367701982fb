import { addressPart } from '../compute/format/address-part.ts';
import type { Cultivar } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { Factor, Level } from '../model/trial.ts';
import { factorField, type FactorFields, type PlanFields } from './plan-fields.ts';
import type { PlanFault } from './read-plan.ts';

/** The factors that the fields name, those that nothing is written for left out; faults go to `fault`. */
export function readFactors(
  { factors, hasCheck }: Pick<PlanFields, 'factors' | 'hasCheck'>,
  cultivars: readonly Cultivar[],
  fault: (field: PlanFault['field'], message: string) => void,
): Factor[] {
  const read: Factor[] = [];
  factors.forEach((fields, index) => {
    if (index > 0 && fields.factor.trim() === '' && fields.levels.trim() === '') return;
    if (index > 0 && fields.factor.trim() === '')
      return fault(
        factorField('factor', index),
        say('Write what differs, such as “{example}”.', { example: say('Solution strength') }),
      );
    const one = readFactor(fields, index === 0 && hasCheck, cultivars);
    if (typeof one === 'string') return fault(factorField('levels', index), one);
    if (read.some(({ id }) => id === one.id))
      return fault(factorField('factor', index), say('This is named above already.'));
    read.push(one);
  });
  return read;
}

/** The factor with its levels, or what is wrong with them. */
function readFactor(
  { factor, levels }: FactorFields,
  hasCheck: boolean,
  cultivars: readonly Cultivar[],
): Factor | string {
  const name = factor.trim() === '' ? say('Cultivar') : factor.trim();
  const ofCultivars = /^cultivar(?:s|es)?$/i.test(name);
  const names = levels
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const read = names.map((line): Level => {
    const listed = cultivars.find(
      (cultivar) => cultivar.id === line || cultivar.name.toLowerCase() === line.toLowerCase(),
    );
    if (ofCultivars && listed) return { id: listed.id };
    const id = /^[\d.]+$/.test(line) ? line : addressPart(line).slice(0, 64).replace(/-$/, '');
    return id === line && !ofCultivars ? { id } : { id, name: line };
  });
  const ids = new Set(read.map(({ id }) => id));
  const [first, ...rest] = read;
  if (first === undefined || rest.length === 0) return say('Write at least two, each on a line of its own.');
  if (ids.has('')) return say('A name needs a letter or a figure.');
  if (ids.size < read.length) return say('Two of them are the same.');
  return {
    id: ofCultivars ? 'cultivar' : addressPart(name).replaceAll('-', '_') || 'treatment',
    name,
    ...(ofCultivars ? { kind: 'cultivar' as const } : {}),
    levels: [first, ...rest],
    ...(hasCheck ? { check: first.id } : {}),
  };
}
