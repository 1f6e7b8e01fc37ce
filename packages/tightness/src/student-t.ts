/**
 * The value that Student's t with `degrees` degrees of freedom stays below with 95 % probability, which makes a
 * two-sided interval of 90 %.
 *
 * @param degrees 3 or more
 * @source Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.5 (expansion in 1/degrees)
 * @accuracy 0.1 % from 3 degrees of freedom up, against the printed table
 */
export function studentT95(degrees: number): number {
  const x = NORMAL_95
  const nu = degrees
  const g1 = (x ** 3 + x) / 4
  const g2 = (5 * x ** 5 + 16 * x ** 3 + 3 * x) / 96
  const g3 = (3 * x ** 7 + 19 * x ** 5 + 17 * x ** 3 - 15 * x) / 384
  const g4 = (79 * x ** 9 + 776 * x ** 7 + 1482 * x ** 5 - 1920 * x ** 3 - 945 * x) / 92_160
  return x + g1 / nu + g2 / nu ** 2 + g3 / nu ** 3 + g4 / nu ** 4
}

/** The same of the normal distribution. */
export const NORMAL_95 = 1.644_853_627
