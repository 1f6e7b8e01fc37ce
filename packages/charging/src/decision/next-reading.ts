import type { Cause, Diagnosis, Observable, ReadingOutlook, Spread } from '@chargewright/diagnosis'
import type { NextReading } from './decision.ts'
import { expectedLosses, type Truths } from './expected-loss.ts'

/**
 * The readings that were not taken, the one that saves most expected loss first. For each cause the reading is spread as
 * that cause expects it; for each value it could have, the causes are weighed anew and the best act is taken.
 */
export function nextReadings({ readings }: Diagnosis, truths: Truths): readonly NextReading[] {
  const now = expectedLosses(truths)[0]!.loss
  return readings
    .filter(({ read }) => read === undefined)
    .map((outlook) => ({
      observable: outlook.observable,
      saves: now - lossAfter(outlook, truths),
      required: REQUIRED.includes(outlook.observable),
    }))
    .toSorted((a, b) => Number(b.required) - Number(a.required) || b.saves - a.saves || rank(a) - rank(b))
}

/** Without liquid pressure and temperature nothing is said about the charge: misses then triple, on simulated systems. */
const REQUIRED: readonly Observable[] = ['condensing', 'subcooling']

/** Of readings that save alike, those that experience shows to tell most. */
const USUAL: readonly Observable[] = ['subcooling', 'condensing', 'compressorPower', 'condenserAirRise', 'drierDrop']
const rank = ({ observable }: NextReading) => (USUAL.indexOf(observable) + USUAL.length) % USUAL.length

function lossAfter({ expected }: ReadingOutlook, truths: Truths): number {
  const causes = Object.entries(truths).flatMap(([name, p]) => {
    const cause = name as Cause
    const outlook = expected[cause] ?? expected.sound
    return p > 0 && outlook ? [{ cause, p, outlook }] : []
  })
  const total = causes.reduce((sum, { p }) => sum + p, 0)
  let loss = 0
  for (const { p, outlook } of causes) {
    for (const [at, weight] of NODES) {
      const value = outlook.mean + at * outlook.sd
      const weighed = causes.map((other) => [other.cause, other.p * density(value, other.outlook)] as const)
      const sum = weighed.reduce((all, [, q]) => all + q, 0)
      const after: Truths = Object.fromEntries(weighed.map(([cause, q]) => [cause, q / sum]))
      loss += (p / total) * weight * expectedLosses(after)[0]!.loss
    }
  }
  return loss
}

const density = (value: number, { mean, sd }: Spread) => Math.exp(-0.5 * ((value - mean) / sd) ** 2) / sd

/** Gauss and Hermite's rule of order five for a standard normal variable: place and weight. */
const NODES = [
  [-2.856970013872806, 0.011257411327721],
  [-1.355626179974266, 0.222075922005613],
  [0, 0.533333333333333],
  [1.355626179974266, 0.222075922005613],
  [2.856970013872806, 0.011257411327721],
] as const
