import { milliseconds } from './time.ts'

const CALLS = 500
const ROUNDS = 600

/**
 * What it costs to carry three partial derivatives along: a chain of the operations that the cycle is made of (pressure
 * ratio, efficiency, effectiveness, a root), plain and as dual numbers in preallocated registers. Times over plain.
 */
export function dualCost(): number {
  let sum = 0
  const plainly = () => {
    for (let i = 0; i < CALLS; i++) sum += plain(13 + i * 1e-6, 14.5, 2)
  }
  const dually = () => {
    for (let i = 0; i < CALLS; i++) sum += dual(13 + i * 1e-6, 14.5, 2)
  }
  const over = milliseconds(dually, ROUNDS) / milliseconds(plainly, ROUNDS)
  if (!Number.isFinite(sum)) throw new Error('the chain left its range')
  return over
}

function plain(x: number, y: number, z: number): number {
  const suction = Math.exp(x)
  const discharge = Math.exp(y)
  const ln = Math.log(discharge / suction)
  const efficiency = z / (z + ln * ln)
  const effectiveness = z * Math.exp(-ln)
  return (Math.sqrt(discharge * effectiveness + efficiency) * ln) / (suction + effectiveness)
}

/** Value and three partials per register. */
const r = new Float64Array(4 * 16)

function dual(x: number, y: number, z: number): number {
  r.fill(0)
  for (const [k, value] of [x, y, z].entries()) {
    r[4 * k] = value
    r[4 * k + 1 + k] = 1
  }
  exponential(3, 0)
  exponential(4, 1)
  quotient(5, 4, 3)
  chained(6, 5, Math.log(r[20]!), 1 / r[20]!)
  product(7, 6, 6)
  total(7, 7, 2)
  quotient(7, 2, 7)
  chained(8, 6, -r[24]!, -1)
  exponential(8, 8)
  product(8, 2, 8)
  product(9, 4, 8)
  total(9, 9, 7)
  const root = Math.sqrt(r[36]!)
  chained(9, 9, root, 0.5 / root)
  product(9, 9, 6)
  total(10, 3, 8)
  quotient(9, 9, 10)
  return r[36]! + r[37]! + r[38]! + r[39]!
}

function exponential(to: number, of: number): void {
  const value = Math.exp(r[4 * of]!)
  chained(to, of, value, value)
}

function chained(to: number, of: number, value: number, slope: number): void {
  for (let k = 1; k < 4; k++) r[4 * to + k] = slope * r[4 * of + k]!
  r[4 * to] = value
}

function product(to: number, a: number, b: number): void {
  const [u, v] = [r[4 * a]!, r[4 * b]!]
  for (let k = 1; k < 4; k++) r[4 * to + k] = u * r[4 * b + k]! + v * r[4 * a + k]!
  r[4 * to] = u * v
}

function quotient(to: number, a: number, b: number): void {
  const [v, q] = [r[4 * b]!, r[4 * a]! / r[4 * b]!]
  for (let k = 1; k < 4; k++) r[4 * to + k] = (r[4 * a + k]! - q * r[4 * b + k]!) / v
  r[4 * to] = q
}

function total(to: number, a: number, b: number): void {
  for (let k = 0; k < 4; k++) r[4 * to + k] = r[4 * a + k]! + r[4 * b + k]!
}
