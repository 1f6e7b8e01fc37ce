import {
  type Dimension,
  findUnit,
  preferredUnit,
  type Unit,
  type UnitPreference,
  unitsOf,
} from '@chargewright/quantity'
import { impliedUnit, secondUnit } from './implied-unit.ts'
import { withUnit } from './with-unit.ts'

/** Units that no instrument of the trade shows get no key; typed, they are read all the same. */
const WITHOUT_KEY: readonly string[] = ['Pa g', 'Pa a', 'Pa', 'K', 'kg/s', 'm³/s']

/** What stands behind the last number. */
const LAST_UNIT = /[\d.,/¼½¾⅛⅜⅝⅞]\s*([^\d.,/¼½¾⅛⅜⅝⅞]+)$/

/** A unit for the number that comes. */
const UNIT_ALONE = /^\s*[-−–]?\s*([^\d.,/¼½¾⅛⅜⅝⅞]+)$/

/** The units that are offered for a quantity, the preferred one first. */
export function offeredUnits(dimension: Dimension, units: UnitPreference): readonly Unit[] {
  const preferred = preferredUnit(dimension, units)
  const others = unitsOf(dimension).filter((unit) => unit !== preferred && !WITHOUT_KEY.includes(unit.symbol))
  return [preferred, ...others]
}

/** One key for all units: which one holds for the number that is typed, and which one the next press gives. */
export function unitKey(text: string, dimension: Dimension, units: UnitPreference) {
  const [, spelling = ''] = LAST_UNIT.exec(text) ?? UNIT_ALONE.exec(text) ?? []
  const written = spelling.trim() === '' ? undefined : findUnit(spelling, dimension)
  const before = written ? text.slice(0, text.lastIndexOf(spelling)) : text
  const second = secondUnit(before, dimension)
  const offered = second ? [second] : offeredUnits(dimension, units)
  const now = written ?? impliedUnit(text, dimension, units)
  const next = offered[(offered.indexOf(now) + 1) % offered.length]!
  return { now, next, press: () => withUnit(text, next.symbol) }
}

/** Whether nothing was typed yet, but a unit for the number that comes. */
export function isUnitAlone(text: string, dimension: Dimension): boolean {
  const [, spelling = ''] = UNIT_ALONE.exec(text) ?? []
  return findUnit(spelling, dimension) !== undefined
}
