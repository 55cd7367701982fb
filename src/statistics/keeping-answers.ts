/** So many answers are kept; then all are let go. */
const most = 500;

/**
 * A function of numbers that keeps its answers: for quantiles, which are searched for and asked for again and again
 * with the same degrees of freedom, by every interval of a trial and by trials alike in design.
 *
 * @param work depends on its arguments alone; what it throws is not kept
 */
export function keepingAnswers<Arguments extends readonly number[]>(
  work: (...given: Arguments) => number,
): (...given: Arguments) => number {
  const answers = new Map<string, number>();
  return (...given) => {
    const key = given.join();
    const known = answers.get(key);
    if (known !== undefined) return known;
    const answer = work(...given);
    if (answers.size >= most) answers.clear();
    answers.set(key, answer);
    return answer;
  };
}
