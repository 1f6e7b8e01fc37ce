/** Largest seed. */
export const MOST_SEED = 2_147_483_646

/** Numbers evenly spread from 0 to 1 that repeat with their seed. */
export type SeededRandom = () => number

/**
 * Park and Miller's generator.
 *
 * @param seed whole, 1 to 2 147 483 646
 * @source Park, Miller: Random number generators: good ones are hard to find. Communications of the ACM 31 (1988),
 * with the multiplier 48271 of their later note (36, 1993)
 */
export function seededRandom(seed: number): SeededRandom {
  let state = seed
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}
