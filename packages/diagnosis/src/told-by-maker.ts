import type { Belief } from './belief.ts'
import type { Spread } from './diagnosis.ts'
import { dot } from './gaussian.ts'
import type { Observable } from './observable.ts'
import { AT } from './observe.ts'
import type { Predicted } from './point.ts'

/** What its maker says that a sound one reads in the weather of the first set, and how far a unit may be from that. */
export type MakersWord = Readonly<Partial<Record<Observable, Spread>>>

/**
 * The belief about a system once its maker's word is known. It is a reading of a sound one in just this weather, so it
 * says nothing of the thermometers that read the weather, and all that it says of the system holds for every cause.
 *
 * @param sound what the twin predicts of a sound system
 */
export function toldByMaker(belief: Belief, sound: Predicted, word: MakersWord): Belief {
  const said = Object.entries(word) as readonly (readonly [Observable, Spread])[]
  return said.reduce((known, [observable, { mean, sd }]) => {
    const columns = known.names.length
    const at = AT[observable]
    const row = sound.slopes
      .subarray(at * columns, (at + 1) * columns)
      .map((slope, a) => (known.lasting[a] ? slope : 0))
    return conditioned(known, row, mean - sound.values[at]!, sd)
  }, belief)
}

/** Given that slope·unknowns is this much, but for an error of its own. */
function conditioned(belief: Belief, slope: Float64Array, amount: number, sd: number): Belief {
  const n = slope.length
  const shared = slope.map((_, a) => dot(belief.covariance.subarray(a * n, (a + 1) * n), slope))
  const variance = dot(slope, shared) + sd ** 2
  const surprise = (amount - dot(slope, belief.mean)) / variance
  return {
    ...belief,
    mean: belief.mean.map((value, a) => value + shared[a]! * surprise),
    covariance: belief.covariance.map((value, i) => value - (shared[Math.floor(i / n)]! * shared[i % n]!) / variance),
  }
}
