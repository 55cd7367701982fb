import type { Matrix } from './matrix.ts';

const STEPS = 60;

/**
 * The eigenvalues alone of a symmetric matrix, largest first: Householder's reduction to three diagonals, then
 * the QL method with implicit shifts. For matrices too large for Jacobi's rotations (see symmetricEigen);
 * errors are of the order of the last digit of the largest eigenvalue.
 * Reference: Wilkinson & Reinsch (1971) Handbook for Automatic Computation II, procedures tred1 and imtql1.
 */
export function symmetricEigenvalues(a: Matrix): number[] {
  const { diagonal, beside } = threeDiagonals(a);
  for (let from = 0; from < diagonal.length; from++) {
    for (let step = 0; ; step++) {
      const to = endOfBlock(diagonal, beside, from);
      if (to === from) break;
      if (step === STEPS) throw new Error('symmetricEigenvalues did not converge');
      implicitStep(diagonal, beside, from, to);
    }
  }
  return Array.from(diagonal).sort((x, y) => y - x);
}

/** The diagonal of a similar matrix of three diagonals, and what stands beside it (entry i beside i and i + 1). */
function threeDiagonals(a: Matrix): { diagonal: Float64Array; beside: Float64Array } {
  const size = a.rows;
  const work = Float64Array.from(a.values);
  const beside = new Float64Array(size);
  for (let k = 0; k < size - 2; k++) {
    const column = work.subarray(k * size, (k + 1) * size);
    let squares = 0;
    for (let i = k + 1; i < size; i++) squares += column[i]! ** 2;
    const length = Math.sqrt(squares);
    if (length === 0) continue;
    const head = column[k + 1]! > 0 ? -length : length;
    const vector = new Float64Array(size);
    for (let i = k + 1; i < size; i++) vector[i] = column[i]!;
    vector[k + 1]! -= head;
    reflect(work, size, k + 1, vector, 2 / (2 * (squares - head * column[k + 1]!)));
    beside[k] = head;
  }
  if (size >= 2) beside[size - 2] = work[(size - 2) * size + size - 1]!;
  return { diagonal: Float64Array.from({ length: size }, (_, i) => work[i * size + i]!), beside };
}

/** Replaces the trailing part A of a symmetric matrix by H A H, H = I - scale v v'. */
function reflect(work: Float64Array, size: number, from: number, v: Float64Array, scale: number): void {
  const product = new Float64Array(size);
  for (let j = from; j < size; j++) {
    const entry = v[j]!;
    for (let i = from; i < size; i++) product[i]! += work[j * size + i]! * entry;
  }
  let inner = 0;
  for (let i = from; i < size; i++) inner += product[i]! * v[i]!;
  for (let i = from; i < size; i++) product[i] = scale * (product[i]! - (scale / 2) * inner * v[i]!);
  for (let j = from; j < size; j++) {
    for (let i = from; i < size; i++) {
      work[j * size + i]! -= v[i]! * product[j]! + product[i]! * v[j]!;
    }
  }
}

/** The last index of the block that begins at `from` and hangs together. */
function endOfBlock(diagonal: Float64Array, beside: Float64Array, from: number): number {
  let to = from;
  while (to < diagonal.length - 1) {
    const scale = Math.abs(diagonal[to]!) + Math.abs(diagonal[to + 1]!);
    if (Math.abs(beside[to]!) <= Number.EPSILON * scale) break;
    to++;
  }
  return to;
}

function implicitStep(diagonal: Float64Array, beside: Float64Array, from: number, to: number): void {
  const slope = (diagonal[from + 1]! - diagonal[from]!) / (2 * beside[from]!);
  const reach = Math.hypot(slope, 1);
  let g = diagonal[to]! - diagonal[from]! + beside[from]! / (slope + (slope < 0 ? -reach : reach));
  let [sine, cosine, shift] = [1, 1, 0];
  for (let i = to - 1; i >= from; i--) {
    const f = sine * beside[i]!;
    const b = cosine * beside[i]!;
    const length = Math.hypot(f, g);
    beside[i + 1] = length;
    if (length === 0) {
      diagonal[i + 1]! -= shift;
      beside[to] = 0;
      return;
    }
    sine = f / length;
    cosine = g / length;
    g = diagonal[i + 1]! - shift;
    const r = (diagonal[i]! - g) * sine + 2 * cosine * b;
    shift = sine * r;
    diagonal[i + 1] = g + shift;
    g = cosine * r - b;
  }
  diagonal[from]! -= shift;
  beside[from] = g;
  beside[to] = 0;
}
