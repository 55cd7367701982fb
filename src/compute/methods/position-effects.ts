import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { unitName } from '../format/unit-name.ts';
import type { Method } from './method.ts';

export const positionEffects: Method = {
  id: 'position',
  name: 'Effects of place',
  use: 'Whether weight changes along the rows or columns of a container after treatments are allowed for, and whether the edge differs from the interior. Where treatment and container are one, this is fitted within each container.',
  formula: [
    'weight = treatment + slope × row + slope × column + residual, by least squares',
    'edge = positions on the border of the grid; interior = the others',
  ],
  references: [
    'G. W. Snedecor and W. G. Cochran (1989), Statistical Methods, 8th edition, Iowa State University Press, chapter 17.',
  ],
  example({ findings }) {
    const found = findings.position.find(({ rows }) => rows.slope !== null);
    if (!found || found.rows.slope === null) return null;
    const error = found.rows.se === null ? '' : ` ± ${formatNumber(found.rows.se, 2)}`;
    const formula = say('{slope} {unit} for each row', {
      slope: `${formatNumber(found.rows.slope, 2, { plus: true })}${error}`,
      unit: unitName(findings.variable.unit),
    });
    return {
      of: say('container {container}', { container: found.container }),
      steps: [{ name: 'Slope along the rows', formula }],
    };
  },
};
