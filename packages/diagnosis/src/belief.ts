import type { DeviceCalibration } from './calibration.ts'
import type { Family } from './family.ts'
import type { Memory } from './memory.ts'
import { OBSERVABLE_NAMES } from './observable.ts'

/** The joint Gaussian of everything unknown about a system but its cause and its charge. */
export interface Belief {
  readonly names: readonly string[]
  /** Whether it stays true until the next visit. */
  readonly lasting: readonly boolean[]
  readonly mean: Float64Array
  /** Row after row. */
  readonly covariance: Float64Array
}

/**
 * What is believed before this visit's readings: the spreads of systems in general, and where there is a memory of
 * this one, that instead. Besides the family's members there is one unknown per observable: what the twin cannot
 * explain with any design.
 */
export function beliefOf(family: Family, calibration: DeviceCalibration, memory?: Memory): Belief {
  const members = family.members.map(({ nuisance: { name, sd, kind } }) => ({
    name,
    sd: sd * (calibration.spread[name] ?? 1),
    lasting: kind !== 'weather',
  }))
  const structure = OBSERVABLE_NAMES.map((name) => ({
    name: structureOf(name),
    sd: calibration.discrepancy[name],
    lasting: true,
  }))
  const all = [...members, ...structure]
  const n = all.length
  const mean = new Float64Array(n)
  const covariance = new Float64Array(n * n)
  const remembered = all.map(({ name, lasting }) => (lasting && memory ? memory.names.indexOf(name) : -1))
  for (const [i, { sd }] of all.entries()) {
    const m = remembered[i]!
    if (m < 0) {
      covariance[i * n + i] = sd * sd
      continue
    }
    mean[i] = memory!.mean[m]!
    for (let j = 0; j < n; j++) {
      const other = remembered[j]!
      if (other >= 0) covariance[i * n + j] = memory!.covariance[m]![other]!
    }
    // What wears, gathers dust or is turned between two visits.
    covariance[i * n + i]! += (DRIFT * sd) ** 2
  }
  return { names: all.map(({ name }) => name), lasting: all.map(({ lasting }) => lasting), mean, covariance }
}

/** Per unknown, those that it varies with: before anything is remembered or told, itself alone. */
export function linkedIn({ mean: { length: n }, covariance }: Belief): readonly (readonly number[])[] {
  return Array.from({ length: n }, (_, a) => {
    const row = covariance.subarray(a * n, (a + 1) * n)
    return [...row.keys()].filter((b) => row[b] !== 0)
  })
}

export const structureOf = (observable: string): string => `structure.${observable}`

/** Spread that comes anew between two visits, over the spread among systems: *common practice*. */
const DRIFT = 0.3
