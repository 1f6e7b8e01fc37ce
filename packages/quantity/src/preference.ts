import type { Dimension } from './quantity.ts'
import { findUnit, type Unit, unitsOf } from './unit.ts'

/** The unit in which each dimension is shown, by symbol. */
export type UnitPreference = Readonly<Partial<Record<Dimension, string>>>

/** Inch-pound units as the North American trade writes them. */
export const INCH_POUND: UnitPreference = {
  'gauge pressure': 'psig',
  'absolute pressure': 'psia',
  'pressure difference': 'psi',
  temperature: '°F',
  'temperature difference': '°F',
  mass: 'oz',
  length: 'ft',
  'mass per length': 'oz/ft',
  elevation: 'ft',
  volume: 'in³',
  airflow: 'CFM',
  'specific airflow': 'CFM per ton',
  velocity: 'ft/min',
  'mass flow': 'lb/h',
  'cooling capacity': 'ton',
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
}

/** The preferred unit of a dimension, or the first one offered. */
export function preferredUnit(dimension: Dimension, preference: UnitPreference): Unit {
  const symbol = preference[dimension]
  const unit = symbol === undefined ? undefined : findUnit(symbol, dimension)
  return unit ?? unitsOf(dimension)[0]!
}
