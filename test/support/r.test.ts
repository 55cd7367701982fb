import { expect, test } from 'vitest';
import { namedNumbersFromR, numbersFromR, runR, sharedR } from './r.ts';

test('doubles cross to R and back bit for bit', async () => {
  const values = [0.1 + 0.2, 1e-310, -Math.PI, 2 ** 53 - 1, Infinity];
  expect(await numbersFromR('x', { x: values })).toEqual(values);
});

test('R values arrive as plain JavaScript', async () => {
  const value = await runR(`list(
    scalar = 1.5, vector = c(1, NA, 3), named = c(a = 1, b = 2), text = "t", flag = TRUE, nothing = NULL,
    matrix = matrix(1:4, 2), factor = factor(c("low", "high")), frame = data.frame(u = 1:2, v = c("p", NA)))`);
  expect(value).toEqual({
    scalar: 1.5,
    vector: [1, null, 3],
    named: { a: 1, b: 2 },
    text: 't',
    flag: true,
    nothing: null,
    matrix: [
      [1, 3],
      [2, 4],
    ],
    factor: ['low', 'high'],
    frame: { u: [1, 2], v: ['p', null] },
  });
});

test('an R error rejects with the message of R', async () => {
  await expect(runR('stop("no such plot")')).rejects.toThrow('no such plot');
});

test('a script that reads a file prints its lines', async () => {
  const r = await sharedR();
  await r.writeFile('/home/web_user/weights.csv', 'pot,weight\n1,12.5\n2,13.5\n');
  expect(await r.printed('w <- read.csv("weights.csv"); cat(mean(w$weight), "g\\n")')).toEqual(['13 g']);
});

test('named numbers keep their names', async () => {
  expect(await namedNumbersFromR('c(first = 1, second = 2.5)')).toEqual({ first: 1, second: 2.5 });
});
