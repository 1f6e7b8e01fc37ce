import type { Dimension } from './quantity.ts'
import { UNITS } from './unit-table.ts'

/** A unit people type or read. SI value = typed · scale + offset. */
export interface Unit {
  readonly symbol: string
  readonly dimension: Dimension
  readonly scale: number
  readonly offset?: number
  /** Spellings other than the symbol, compared without spaces, case, dots and degree signs. */
  readonly spellings: readonly string[]
  /** Decimals shown. */
  readonly decimals: number
  /** Code in the Unified Code for Units of Measure, where it has one (it has none for gauge pressure). */
  readonly ucum?: string
}

/** The units of a dimension, in the order in which they are offered. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS.filter((unit) => unit.dimension === dimension)
}

/** The unit of `dimension` that `spelling` names, if any. */
export function findUnit(spelling: string, dimension: Dimension): Unit | undefined {
  if (spelling.length > LONGEST_SPELLING) return undefined
  return BY_SPELLING.get(keyOf(dimension, spelling))
}

/** SI from a number in `unit`, and back. */
export const toSi = (value: number, unit: Unit): number => value * unit.scale + (unit.offset ?? 0)
export const fromSi = (si: number, unit: Unit): number => (si - (unit.offset ?? 0)) / unit.scale

/** Made once, because a text is read with every key press. */
const BY_SPELLING: ReadonlyMap<string, Unit> = new Map(
  UNITS.flatMap((unit) => [unit.symbol, ...unit.spellings].map((each) => [keyOf(unit.dimension, each), unit] as const)),
)

/** Far beyond any spelling in the table. Unicode normalisation of a long hostile text takes time that grows as its square. */
const LONGEST_SPELLING = 64

function keyOf(dimension: Dimension, spelling: string): string {
  return `${dimension}/${normalise(spelling)}`
}

/**
 * Compatibility forms become plain (`℃`, `m³`, `µ`), and the signs that keyboards offer for a degree are one. Case is
 * dropped although it divides MPa from mPa: nobody measures a refrigerant in millipascals, many type `mpa`.
 */
function normalise(spelling: string): string {
  return spelling
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.°_]/g, '')
}
