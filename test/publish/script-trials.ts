/** Made trials of designs that the demo and the published tables lack; weights follow a fixed rule, not chance. */
import type { Trial } from '../../src/model/trial.ts';
import { type PlantOfTrial, trialOf } from '../support/trial-of.ts';

/** A number between -1 and 1 that looks like noise and is the same at every run. */
const rough = (seed: number) => Math.round(1000 * Math.sin(12.9898 * seed + seed * seed)) / 1000;

/** Two varieties on plots in four blocks, three strengths within each plot; a whole plot and two pots lost. */
export function unbalancedSplitPlot(): Trial {
  const plants = [1, 2, 3, 4].flatMap((block) =>
    ['wren', 'plover'].flatMap((variety, v) =>
      ['0.5', '1', '1.5'].map((strength, s): PlantOfTrial => {
        const lost =
          (block === 4 && v === 1) ||
          (block === 1 && v === 0 && s === 2) ||
          (block === 2 && v === 1 && s === 0);
        return {
          container: `B${block}`,
          block: String(block),
          plot: `${block}-${variety}`,
          treatment: { variety, strength },
          weight: lost
            ? null
            : 90 + 6 * block + 11 * v + 8 * s + 7 * rough(10 * block + v) + 4 * rough(7 * block + 3 * v + s),
          ...(lost ? { status: 'culled' as const } : {}),
        };
      }),
    ),
  );
  return trialOf(plants, {
    check: { strength: '1' },
    design: { arrangement: 'split plot', allotted: 'position', randomised: true },
  });
}

/** Four treatments in a square of four rows and four columns. */
export function latinSquare(): Trial {
  const plants = [0, 1, 2, 3].flatMap((row) =>
    [0, 1, 2, 3].map((column): PlantOfTrial => ({
      container: 'T1',
      row: row + 1,
      column: column + 1,
      treatment: { cultivar: 'abcd'.charAt((row + column) % 4) },
      weight: 100 + 5 * row - 3 * column + 9 * ((row + column) % 4) + 4 * rough(4 * row + column + 1),
    })),
  );
  return trialOf(plants, {
    check: { cultivar: 'a' },
    design: { arrangement: 'latin square', allotted: 'position', randomised: true },
  });
}

/** Two squares of three, each in a tank of its own: their rows and columns lie within tanks. */
export function twoSquares(): Trial {
  const plants = ['T1', 'T2'].flatMap((container, t) =>
    [0, 1, 2].flatMap((row) =>
      [0, 1, 2].map((column): PlantOfTrial => {
        const variety = (row + (t + 1) * column) % 3;
        const noise = 6 * rough(9 * t + 3 * row + column + 2);
        return {
          container,
          row: row + 1,
          column: column + 1,
          treatment: { cultivar: 'abc'.charAt(variety) },
          weight: 90 + 12 * t + 4 * row - 3 * column + 7 * variety + noise,
        };
      }),
    ),
  );
  return trialOf(plants, {
    design: { arrangement: 'latin square', allotted: 'position', randomised: true },
  });
}

/** One tank for each strength, two cultivars in each, a pot lost: what tells tanks apart has no error. */
export function oneTankAStrength(): Trial {
  const plants = ['0.5', '1', '1.5'].flatMap((strength, s) =>
    Array.from({ length: 6 }, (_, pot): PlantOfTrial => ({
      container: `T${s + 1}`,
      treatment: { strength, cultivar: pot % 2 === 0 ? 'wren' : 'plover' },
      ...(s + pot === 0
        ? { weight: null, status: 'culled' as const }
        : { weight: 70 + 9 * s + 6 * (pot % 2) + 5 * rough(6 * s + pot) }),
    })),
  );
  return trialOf(plants, {
    check: { strength: '1', cultivar: 'wren' },
    design: { arrangement: 'split plot', allotted: 'position', randomised: true },
  });
}

/** Two strengths on four tanks each, three plants in a tank, some dead; a step too far leaves the variances below zero. */
export function tanksWithDead(): Trial {
  const weights = [
    [3543, 3528, 3694],
    [2805, null, 4177],
    [4714, 4627, 5332],
    [null, 1021, 1720],
    [1636, 49, 1094],
    [1344, 2641, null],
    [2077, 1887, 3722],
    [4173, 3063, 2912],
  ];
  const plants = weights.flatMap((ofTank, tank) =>
    ofTank.map((weight): PlantOfTrial => ({
      container: `T${tank + 1}`,
      treatment: { strength: [0, 4, 5, 6].includes(tank) ? '1' : '0.5' },
      weight,
      ...(weight === null ? { status: 'dead' as const } : {}),
    })),
  );
  return trialOf(plants, {
    design: { arrangement: 'completely randomised', allotted: 'container', randomised: true },
  });
}

/** Pots of three heavy plants, some lost: variances so large that the likelihood hardly slopes by them. */
export function heavyPlants(): Trial {
  const pots: [string, ...(number | 'dead' | 'culled' | 'not weighed' | 'not planted')[]][] = [
    ['c', 2642, 'dead', 4285],
    ['d', 1, 673, 1],
    ['d', 1, 1, 476],
    ['c', 7687, 7600, 'dead'],
    ['c', 6198, 6845, 6902],
    ['a', 5765, 4110, 4091],
    ['c', 2296, 2379, 2392],
    ['a', 2145, 4921, 3229],
    ['d', 1, 2939, 2204],
    ['a', 218, 1, 1],
    ['b', 5631, 3307, 'dead'],
    ['d', 164, 1, 1],
    ['d', 2458, 2242, 1845],
    ['a', 3534, 6020, 3359],
    ['c', 5989, 4583, 5086],
    ['b', 3050, 'dead', 4840],
    ['a', 1, 1429, 1351],
    ['a', 6466, 7641, 6623],
    ['b', 3481, 2192, 3826],
  ];
  const plants = pots.flatMap(([cultivar, ...weights], pot) =>
    weights.map((weight): PlantOfTrial => ({
      container: 'B1',
      row: pot + 1,
      column: 1,
      treatment: { cultivar },
      ...(typeof weight === 'number' ? { weight } : { weight: null, status: weight }),
    })),
  );
  return trialOf(plants);
}

/** Three treatments, four pots of each, three plants in a pot: some dead, culled or not weighed. */
export function lostPlants(): Trial {
  const fates: Record<number, PlantOfTrial['status']> = {
    4: 'dead',
    11: 'culled',
    17: 'not weighed',
    23: 'dead',
    30: 'not planted',
  };
  const plants = Array.from({ length: 36 }, (_, index): PlantOfTrial => {
    const pot = Math.floor(index / 3);
    const status = fates[index];
    return {
      container: 'B1',
      row: pot + 1,
      column: 1,
      treatment: { cultivar: ['a', 'b', 'c'][pot % 3]! },
      weight: status ? null : 60 + 8 * (pot % 3) + 6 * rough(pot + 1) + 9 * rough(index + 50),
      ...(status ? { status } : {}),
    };
  });
  return trialOf(plants, { check: { cultivar: 'b' } });
}

/** Three cultivars in four tanks each of four plants, cut twice; some gave no second cut. */
export function twoCuts(): Trial {
  const plants = [1, 2].flatMap((cut) =>
    Array.from({ length: 36 }, (_, index): PlantOfTrial => {
      const tank = Math.floor(index / 4);
      const none = cut === 2 && (index === 5 || index === 20);
      return {
        container: `T${tank + 1}`,
        row: (index % 4) + 1,
        column: 1,
        cut,
        treatment: { cultivar: ['a', 'b', 'c'][tank % 3]! },
        weight: none ? null : 40 * cut + 5 * (tank % 3) + 4 * rough(tank + 3) + 6 * rough(index + 40 * cut),
        ...(none ? { status: 'no regrowth' as const } : {}),
      };
    }),
  );
  return trialOf(plants, {
    cuts: ['2025-10-20', '2025-11-12'],
    containers: { cover: { length: 120, width: 60, unit: 'cm' } },
    check: { cultivar: 'c' },
    design: { arrangement: 'completely randomised', allotted: 'container', randomised: true },
  });
}

/** Two factors, two to four pots of each combination, their spread growing with the mean. */
export function unbalancedFactorial(): Trial {
  const plants = ['a', 'b', 'c'].flatMap((cultivar, c) =>
    ['low', 'high'].flatMap((strength, s) =>
      Array.from({ length: 4 + ((c + s) % 3) }, (_, index): PlantOfTrial => {
        const mean = 30 * 2.2 ** (c + s);
        return {
          container: 'B1',
          treatment: { cultivar, strength },
          weight: mean * (1 + 0.2 * rough(31 * c + 17 * s + 5 * index + 2)),
        };
      }),
    ),
  );
  return trialOf(plants, { check: { cultivar: 'a' } });
}

/** Two factors of which one combination was never grown: one has no F, and two levels of it are compared. */
export function factorialWithoutOne(): Trial {
  const plants = ['1a', '1b', '2a', '2b', '3a'].flatMap((pair, p) =>
    [1, 2, 3].map((index): PlantOfTrial => ({
      container: 'B1',
      treatment: { strength: pair.charAt(0), cultivar: pair.charAt(1) },
      weight: 100 + 9 * p + 7 * rough(11 * p + index),
    })),
  );
  return trialOf(plants, { check: { strength: '1', cultivar: 'a' } });
}

/** A check and three of five cultivars in each of three tanks: comparisons related in no simple way. */
export function incompleteTanks(): Trial {
  const tanks = [
    ['check', 'a', 'b', 'c'],
    ['check', 'a', 'd', 'b'],
    ['check', 'c', 'd', 'e'],
  ];
  const plants = tanks.flatMap((cultivars, t) =>
    cultivars.map((cultivar, c): PlantOfTrial => ({
      container: `T${t + 1}`,
      block: String(t + 1),
      treatment: { cultivar },
      weight: 130 + 5 * t + 6 * c + 9 * rough(5 * t + c + 3),
    })),
  );
  return trialOf(plants, { check: { cultivar: 'check' } });
}

/** Five cultivars in four tanks, four of the twenty lost: the same. */
export function tanksWithLost(): Trial {
  const lost = ['1b', '2c', '3b', '4d'];
  const plants = [1, 2, 3, 4].flatMap((tank) =>
    [...'abcde'].map((cultivar, c): PlantOfTrial => ({
      container: `T${tank}`,
      block: String(tank),
      treatment: { cultivar },
      weight: lost.includes(`${tank}${cultivar}`) ? null : 110 + 4 * tank + 5 * c + 8 * rough(6 * tank + c),
    })),
  );
  return trialOf(plants, {
    check: { cultivar: 'a' },
    design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true },
  });
}

/** Scores from 1 to 5 in five blocks of four pots, with ties. */
export function scores(): Trial {
  const plants = [1, 2, 3, 4, 5].flatMap((block) =>
    ['a', 'b', 'c', 'd'].map((cultivar, c): PlantOfTrial => ({
      container: `B${block}`,
      block: String(block),
      treatment: { cultivar },
      weight: Math.max(1, Math.min(5, Math.round(2 + 0.7 * c + 1.3 * rough(8 * block + c)))),
    })),
  );
  return trialOf(plants, {
    variable: { kind: 'scored', unit: '1' },
    check: { cultivar: 'a' },
    design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true },
  });
}

/** Ids and texts that would end a string, a comment or a name of R if they were let. */
export function hostile(): Trial {
  const break_ = `'"); harmed <- TRUE; ("`;
  const levels = [`a\\`, `x${break_}y`, '=1+1', `NA`, `{蕪}\\U{41}\``];
  const plants = levels.flatMap((level, l) =>
    [1, 2, 3].map((index): PlantOfTrial => ({
      container: 'T 1',
      block: index === 1 ? `=b${break_}` : `${index}`,
      treatment: { if: level, TRUE: index === 1 ? 'p' : 'q' },
      weight: 50 + 9 * l + 5 * rough(3 * l + index),
    })),
  );
  return trialOf(plants, {
    design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true },
    metadata: { title: `Harm\nharmed <- TRUE\r\u2028harmed <- TRUE #${break_}\u202e` },
  });
}
