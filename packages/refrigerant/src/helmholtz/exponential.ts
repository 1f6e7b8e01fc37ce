/** Entries of the table of 2^(j/SIZE), and the exponents it is scaled by. */
const BITS = 7
const SIZE = 1 << BITS
const OFFSET = 1100
const TABLE = Float64Array.from({ length: SIZE }, (_, j) => 2 ** (j / SIZE))
const SCALE = Float64Array.from({ length: 2 * OFFSET }, (_, k) => 2 ** (k - OFFSET))
const INVERSE = SIZE / Math.LN2
/** ln 2 in two pieces, the first short enough to be multiplied without rounding. */
const LN2_HIGH = 6.9314718036912382e-1 / SIZE
const LN2_LOW = 1.9082149292705877e-10 / SIZE
/** Beyond this the result leaves the normal doubles and the built-in function takes over. */
const LARGEST = 700

/**
 * eˣ to 4e-16, for the inner loops: x = k·ln 2/128 + r, then a table and a short polynomial in r. The built-in function
 * is a call out of compiled code and takes about twice as long; an equation of state is little else than exponentials.
 */
export function exponential(x: number): number {
  if (!(x > -LARGEST && x < LARGEST)) return Math.exp(x)
  const k = Math.floor(x * INVERSE + 0.5) | 0
  const r = x - k * LN2_HIGH - k * LN2_LOW
  const j = k & (SIZE - 1)
  const r2 = r * r
  const p = r + r2 * (0.5 + r * (1 / 6) + r2 * (1 / 24 + r * (1 / 120)))
  const t = TABLE[j]!
  return (t + t * p) * SCALE[((k - j) >> BITS) + OFFSET]!
}
