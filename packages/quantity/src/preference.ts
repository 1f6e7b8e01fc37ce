import type { Dimension, Quantity } from './quantity.ts'
import { findUnit, type Unit, unitsOf } from './unit.ts'

/** A mass from a pound on as `14 lb 6 oz`; below, and wherever one unit is wanted, in ounces. */
export const POUNDS_AND_OUNCES = 'lb oz'

/**
 * The unit in which each dimension is shown, by symbol; a mass also in pounds and ounces. `vacuum` is the unit of a
 * gauge pressure below the atmosphere, where that is another one than above it, as on a compound gauge.
 */
export type UnitPreference = Readonly<Partial<Record<Dimension | 'vacuum', string>>>

/** Inch-pound units as the North American trade writes them. */
export const INCH_POUND: UnitPreference = {
  'gauge pressure': 'psig',
  'absolute pressure': 'psia',
  'pressure difference': 'psi',
  temperature: '°F',
  'temperature difference': '°F',
  mass: POUNDS_AND_OUNCES,
  length: 'ft',
  'mass per length': 'oz/ft',
  elevation: 'ft',
  volume: 'in³',
  airflow: 'CFM',
  'specific airflow': 'CFM per ton',
  velocity: 'ft/min',
  'mass flow': 'lb/h',
  'cooling capacity': 'ton',
  'specific enthalpy': 'Btu/lb',
}

/** Metric units as the trade writes them elsewhere. */
export const METRIC: UnitPreference = {
  'gauge pressure': 'bar g',
  'absolute pressure': 'bar a',
  'pressure difference': 'bar',
  temperature: '°C',
  'temperature difference': 'K',
  mass: 'g',
  length: 'm',
  'mass per length': 'g/m',
  elevation: 'm',
  volume: 'cm³',
  airflow: 'm³/h',
  'specific airflow': 'm³/h per kW',
  velocity: 'm/s',
  'mass flow': 'kg/h',
  'cooling capacity': 'kW',
  'specific enthalpy': 'kJ/kg',
}

/** The preferred unit of a dimension, or the first one offered. */
export function preferredUnit(dimension: Dimension, preference: UnitPreference): Unit {
  return named(preference[dimension], dimension) ?? unitsOf(dimension)[0]!
}

/**
 * The unit in which this very value is shown: below the atmosphere that of a vacuum; a time in seconds under a minute
 * and in hours from two on, unless a unit of time is preferred.
 */
export function shownUnit({ dimension, si }: Quantity, preference: UnitPreference): Unit {
  const unit = preferredUnit(dimension, preference)
  if (dimension === 'gauge pressure' && si < 0) return named(preference.vacuum, dimension) ?? unit
  if (dimension !== 'duration' || preference.duration !== undefined) return unit
  if (si < MINUTE_S && si > 0) return findUnit('s', dimension) ?? unit
  return si >= TWO_HOURS_S ? (findUnit('h', dimension) ?? unit) : unit
}

const MINUTE_S = 60
const TWO_HOURS_S = 7200

function named(symbol: string | undefined, dimension: Dimension): Unit | undefined {
  return symbol === undefined ? undefined : findUnit(symbol === POUNDS_AND_OUNCES ? 'oz' : symbol, dimension)
}
