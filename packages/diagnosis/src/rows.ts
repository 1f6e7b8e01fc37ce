import { OBSERVABLE_NAMES, type Observable } from './observable.ts'
import { AT, COUNT, type Observed } from './observe.ts'

/** One figure that was read. */
export interface Row {
  readonly set: number
  readonly observable: Observable
  readonly index: number
  readonly value: number
}

export function rowsIn(sets: readonly Observed[]): readonly Row[] {
  return sets.flatMap(({ values }, set) =>
    OBSERVABLE_NAMES.flatMap((observable, index) =>
      Number.isNaN(values[index]!) ? [] : [{ set, observable, index, value: values[index]! }],
    ),
  )
}

/** Covariance of the rows from instrument errors, row after row: sets of one visit share what an instrument is off by. */
export function instrumentCovariance(rows: readonly Row[], sets: readonly Observed[]): Float64Array {
  const n = rows.length
  const R = new Float64Array(n * n)
  const at = new Map(rows.map((row, i) => [row.set * COUNT + row.index, i]))
  for (const [a, { sensors }] of sets.entries()) {
    for (const [b, { sensors: others }] of sets.entries()) {
      for (const sensor of sensors) {
        const other = others.find(({ name }) => name === sensor.name)
        if (!other) continue
        const variance =
          sensor.errors.visit * other.errors.visit + (a === b ? sensor.errors.reading * other.errors.reading : 0)
        for (const [p, moved] of sensor.moves) {
          for (const [q, movedToo] of other.moves) {
            const i = at.get(a * COUNT + AT[p])!
            const j = at.get(b * COUNT + AT[q])!
            R[i * n + j]! += variance * moved * movedToo
          }
        }
      }
    }
  }
  return R
}

/** Directions in which one bad clamp moves the rows, K per K. */
export function clampDirections(rows: readonly Row[]): readonly Float64Array[] {
  return CLAMPED.flatMap((observable) => {
    const direction = Float64Array.from(rows, (row) => (row.observable === observable ? 1 : 0))
    return direction.includes(1) ? [direction] : []
  })
}

const CLAMPED: readonly Observable[] = ['superheat', 'subcooling', 'discharge']
