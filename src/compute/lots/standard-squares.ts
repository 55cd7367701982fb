/** A Latin square by rows; letters are numbered from 0. */
export type Square = readonly (readonly number[])[];

/** Up to this size every standard square is known; there are 16,942,080 of the next. */
export const LARGEST_LISTED = 6;

const listed = new Map<number, readonly Square[]>();

/**
 * The standard squares (first row and first column in order) that lots are drawn from: all of them in the order of
 * their rows read as one word up to size 6, of which there are 1, 1, 1, 4, 56 and 9408; above, the cyclic one alone.
 *
 * Reference: R. A. Fisher and F. Yates (1934), The 6 x 6 Latin squares, Proceedings of the Cambridge Philosophical
 * Society 30, 492-507.
 *
 * @param size a whole number from 1; throws for any other
 * @example standardSquares(3) // [[[0, 1, 2], [1, 2, 0], [2, 0, 1]]]
 */
export function standardSquares(size: number): readonly Square[] {
  if (!Number.isInteger(size) || size < 1)
    throw new RangeError(`standardSquares requires a whole number from 1, not ${size}`);
  const known = listed.get(size);
  if (known !== undefined) return known;
  const squares = size > LARGEST_LISTED ? [cyclicSquare(size)] : allStandardSquares(size);
  listed.set(size, squares);
  return squares;
}

function cyclicSquare(size: number): Square {
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => (row + column) % size),
  );
}

/** Fills the cells one by one with the lowest letter that fits, going back where none does. */
function allStandardSquares(size: number): Square[] {
  const squares: Square[] = [];
  const cells = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => (row === 0 ? column : column === 0 ? row : -1)),
  );
  const fits = (row: number, column: number, letter: number) =>
    cells[row]!.every((other) => other !== letter) && cells.every((line) => line[column] !== letter);
  const fill = (at: number): void => {
    const [row, column] = [Math.floor(at / size), at % size];
    if (row === size) {
      squares.push(cells.map((line) => [...line]));
      return;
    }
    if (row === 0 || column === 0) return fill(at + 1);
    for (let letter = 0; letter < size; letter += 1) {
      if (!fits(row, column, letter)) continue;
      cells[row]![column] = letter;
      fill(at + 1);
      cells[row]![column] = -1;
    }
  };
  fill(0);
  return squares;
}
