import type { SeededRandom } from '../../statistics/seeded-random.ts';
import { type Square, standardSquares } from './standard-squares.ts';

/**
 * Draws a Latin square: a standard square by lot, then its rows, its columns and its letters each put into a random
 * order. Up to size 6 every Latin square of that size is as likely as any other (2, 12, 576, 161,280 and 812,851,200
 * of them); above, every square that the cyclic one can be turned into by the order of its rows, columns and letters.
 *
 * Why: the orders act as a group on the squares, so that within each class of squares that they turn into one another
 * all are as likely, and a class holds standard squares in proportion to its size.
 *
 * @param size the number of rows, columns and letters, from 1
 * @param random draws the standard square (where there are several), then the rows, the columns, the letters
 */
export function drawLatinSquare(size: number, random: SeededRandom): Square {
  const standard = standardSquares(size);
  const chosen = standard.length === 1 ? standard[0]! : standard[random.integer(standard.length)]!;
  const order = () => random.shuffle(Array.from({ length: size }, (_, index) => index));
  const [rows, columns, letters] = [order(), order(), order()];
  return rows.map((row) => columns.map((column) => letters[chosen[row]![column]!]!));
}
