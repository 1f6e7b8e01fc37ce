import { type Air, saturatedWater } from './air.ts'
import type { Coil } from './coil.ts'

const MOST_CELLS = 64
/** Air that leaves each cell, row by row, as last guessed and as the sweep has just made it. */
export const guessed = { T: new Float64Array(MOST_CELLS), w: new Float64Array(MOST_CELLS) }
export const swept = { T: new Float64Array(MOST_CELLS), w: new Float64Array(MOST_CELLS) }
const before = { T: new Float64Array(MOST_CELLS), w: new Float64Array(MOST_CELLS), step: new Float64Array(MOST_CELLS) }

/** Air between the rows as it would be if the whole coil were at one temperature. */
export function guessAir({ rows, perRow }: Coil, air: Air, T: number, reach: number): void {
  const dry = Math.min(saturatedWater(T + 4), air.w)
  for (let row = 0; row < rows; row++) {
    const done = 1 - (1 - 0.7 * reach) ** (row + 1)
    guessed.T.fill(air.T_K + done * (T - air.T_K), row * perRow, (row + 1) * perRow)
    guessed.w.fill(T < air.T_K ? air.w + done * (dry - air.w) : air.w, row * perRow, (row + 1) * perRow)
  }
}

/**
 * The next guess of the air between rows: what the sweep made of the last guess, mixed with what the sweep before made
 * so that the change would vanish were it straight.
 *
 * @source Anderson 1965, with a memory of one
 */
export function improveGuess(cells: number, isFirst: boolean): void {
  let [along, square] = [0, 0]
  if (!isFirst) {
    for (let i = 0; i < cells; i++) {
      const step = swept.T[i]! - guessed.T[i]!
      const turn = step - before.step[i]!
      along += step * turn
      square += turn * turn
    }
  }
  const back = square > 1e-12 ? Math.min(Math.max(along / square, -4), 0.5) : 0
  for (let i = 0; i < cells; i++) {
    const [T, w] = [swept.T[i]!, swept.w[i]!]
    before.step[i] = T - guessed.T[i]!
    // Nothing of an earlier coil may reach this one, hence no zero times what was left here.
    guessed.T[i] = back === 0 ? T : T - back * (T - before.T[i]!)
    guessed.w[i] = back === 0 ? w : Math.max(w - back * (w - before.w[i]!), 1e-4)
    before.T[i] = T
    before.w[i] = w
  }
}
