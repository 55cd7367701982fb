import { say } from '../../model/say.ts';

const compass = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];
const plain = (word: string) => word.toLowerCase().replace(/\b(north|south)[ -]?(east|west)\b/, '$1-$2');

/**
 * The direction of a landmark that is a point of the compass ("north", "South side"): eighths of a turn
 * clockwise from north; null for any other landmark.
 */
export function compassPoint(landmark: string): number | null {
  const word = plain(landmark.trim()).replace(/(?:ern)?(?: (?:side|end|edge))?$/, '');
  const point = compass.indexOf(word);
  return point < 0 ? null : point;
}

/**
 * The side of a container opposite a landmark: the opposite point of the compass where the landmark is one,
 * else "opposite" and the landmark.
 *
 * @example oppositeSide('north') // "south"
 * @example oppositeSide('wall side') // "opposite wall side"
 */
export function oppositeSide(landmark: string): string {
  const point = compassPoint(landmark);
  return point === null ? say('opposite {landmark}', { landmark }) : compass[(point + 4) % 8]!;
}
