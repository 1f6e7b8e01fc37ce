import type { Dimension } from './quantity.ts'

/** A unit people type or read. SI value = typed · scale + offset. */
export interface Unit {
  readonly symbol: string
  readonly dimension: Dimension
  readonly scale: number
  readonly offset?: number
  /** Other spellings, compared without spaces, case, dots and degree signs. */
  readonly spellings: readonly string[]
  /** Decimals shown. */
  readonly decimals: number
  /** Code in the Unified Code for Units of Measure, where it has one (it has none for gauge pressure). */
  readonly ucum?: string
}

// Exact by definition: international inch and pound, standard gravity, thermochemical-free trade units
// (NIST SP 811:2008, appendix B; the ton of refrigeration is 12 000 Btu_IT/h).
const LB = 0.45359237
const INCH = 0.0254
const PSI = (LB * 9.80665) / INCH ** 2
const INHG = 3386.389 // conventional, mercury at 0 °C: NIST SP 811 table B.8 (3.386 389 E+03)
const MICRON = 101325 / 760_000 // 0.001 Torr
const FT = 12 * INCH
const CFM = FT ** 3 / 60
const TON_W = (12_000 * 1055.05585262) / 3600
const RANKINE = 5 / 9

const pressure = (
  dimension: 'absolute pressure' | 'gauge pressure' | 'pressure difference',
  suffix: string,
  spell: (unit: string) => readonly string[],
): readonly Unit[] => [
  { symbol: `psi${suffix}`, dimension, scale: PSI, spellings: spell('psi'), decimals: 1, ...ucum(dimension, '[psi]') },
  { symbol: bar(suffix), dimension, scale: 1e5, spellings: spell('bar'), decimals: 2, ...ucum(dimension, 'bar') },
  {
    symbol: `kPa${space(suffix)}`,
    dimension,
    scale: 1e3,
    spellings: spell('kPa'),
    decimals: 0,
    ...ucum(dimension, 'kPa'),
  },
  {
    symbol: `MPa${space(suffix)}`,
    dimension,
    scale: 1e6,
    spellings: spell('MPa'),
    decimals: 3,
    ...ucum(dimension, 'MPa'),
  },
  { symbol: `Pa${space(suffix)}`, dimension, scale: 1, spellings: spell('Pa'), decimals: 0, ...ucum(dimension, 'Pa') },
]
function bar(suffix: string): string {
  return suffix === '' ? 'bar' : `bar ${suffix}`
}
function space(suffix: string): string {
  return suffix === '' ? '' : ` ${suffix}`
}
function ucum(dimension: Dimension, code: string): { ucum?: string } {
  return dimension === 'gauge pressure' ? {} : { ucum: code }
}

/**
 * Every unit the product reads and writes, in the order in which they are offered. Within one dimension a spelling is
 * unique; across dimensions it may repeat (`psi` is a gauge reading or a difference, as the field expects).
 */
export const UNITS: readonly Unit[] = [
  ...pressure('gauge pressure', 'g', (u) => [u, `${u}g`, `${u}gauge`, `${u}(g)`]),
  {
    symbol: 'inHg vac',
    dimension: 'gauge pressure',
    scale: -INHG,
    spellings: ['inHgvac', 'inHg', 'inHgvacuum', '"Hg'],
    decimals: 1,
  },
  ...pressure('absolute pressure', 'a', (u) => [`${u}a`, `${u}abs`, `${u}absolute`, `${u}(a)`]),
  {
    symbol: 'micron',
    dimension: 'absolute pressure',
    scale: MICRON,
    spellings: ['micron', 'microns', 'mTorr', 'umHg', 'µmHg'],
    decimals: 0,
    ucum: 'um[Hg]',
  },
  {
    symbol: 'inHg abs',
    dimension: 'absolute pressure',
    scale: INHG,
    spellings: ['inHgabs', 'inHga'],
    decimals: 2,
    ucum: "[in_i'Hg]",
  },
  ...pressure('pressure difference', '', (u) => [u, `${u}d`]),
  {
    symbol: 'inH2O',
    dimension: 'pressure difference',
    scale: 249.08891,
    spellings: ['inH2O', 'inwc', 'inwg', '"wc'],
    decimals: 2,
    ucum: "[in_i'H2O]",
  },

  {
    symbol: '°F',
    dimension: 'temperature',
    scale: RANKINE,
    offset: 459.67 * RANKINE,
    spellings: ['F', 'degF', 'fahrenheit'],
    decimals: 1,
    ucum: '[degF]',
  },
  {
    symbol: '°C',
    dimension: 'temperature',
    scale: 1,
    offset: 273.15,
    spellings: ['C', 'degC', 'celsius'],
    decimals: 1,
    ucum: 'Cel',
  },
  { symbol: 'K', dimension: 'temperature', scale: 1, spellings: ['K', 'kelvin'], decimals: 2, ucum: 'K' },
  {
    symbol: '°F',
    dimension: 'temperature difference',
    scale: RANKINE,
    spellings: ['F', 'degF', 'fahrenheit', 'R', 'degR'],
    decimals: 1,
    ucum: '[degR]',
  },
  {
    symbol: 'K',
    dimension: 'temperature difference',
    scale: 1,
    spellings: ['K', 'kelvin', 'C', 'degC', 'celsius'],
    decimals: 1,
    ucum: 'K',
  },

  {
    symbol: 'oz',
    dimension: 'mass',
    scale: LB / 16,
    spellings: ['oz', 'ounce', 'ounces'],
    decimals: 2,
    ucum: '[oz_av]',
  },
  {
    symbol: 'lb',
    dimension: 'mass',
    scale: LB,
    spellings: ['lb', 'lbs', 'pound', 'pounds', '#'],
    decimals: 2,
    ucum: '[lb_av]',
  },
  { symbol: 'g', dimension: 'mass', scale: 1e-3, spellings: ['g', 'gram', 'grams', 'gramme'], decimals: 0, ucum: 'g' },
  {
    symbol: 'kg',
    dimension: 'mass',
    scale: 1,
    spellings: ['kg', 'kilo', 'kilogram', 'kilograms'],
    decimals: 3,
    ucum: 'kg',
  },

  { symbol: 'ft', dimension: 'length', scale: FT, spellings: ['ft', 'foot', 'feet', "'"], decimals: 1, ucum: '[ft_i]' },
  {
    symbol: 'in',
    dimension: 'length',
    scale: INCH,
    spellings: ['in', 'inch', 'inches', '"'],
    decimals: 3,
    ucum: '[in_i]',
  },
  {
    symbol: 'm',
    dimension: 'length',
    scale: 1,
    spellings: ['m', 'metre', 'meter', 'metres', 'meters'],
    decimals: 2,
    ucum: 'm',
  },
  {
    symbol: 'mm',
    dimension: 'length',
    scale: 1e-3,
    spellings: ['mm', 'millimetre', 'millimeter'],
    decimals: 1,
    ucum: 'mm',
  },
  {
    symbol: 'oz/ft',
    dimension: 'mass per length',
    scale: LB / 16 / FT,
    spellings: ['oz/ft', 'ozperft', 'ounces/foot'],
    decimals: 2,
    ucum: '[oz_av]/[ft_i]',
  },
  { symbol: 'g/m', dimension: 'mass per length', scale: 1e-3, spellings: ['g/m', 'gperm'], decimals: 1, ucum: 'g/m' },
  {
    symbol: 'ft',
    dimension: 'elevation',
    scale: FT,
    spellings: ['ft', 'foot', 'feet', "'"],
    decimals: 0,
    ucum: '[ft_i]',
  },
  {
    symbol: 'm',
    dimension: 'elevation',
    scale: 1,
    spellings: ['m', 'metre', 'meter', 'metres', 'meters'],
    decimals: 0,
    ucum: 'm',
  },

  {
    symbol: 'in³',
    dimension: 'volume',
    scale: INCH ** 3,
    spellings: ['in3', 'in³', 'cuin', 'cubicinch', 'cubicinches'],
    decimals: 2,
    ucum: '[cin_i]',
  },
  {
    symbol: 'ft³',
    dimension: 'volume',
    scale: FT ** 3,
    spellings: ['ft3', 'ft³', 'cuft', 'cubicfeet'],
    decimals: 3,
    ucum: '[cft_i]',
  },
  {
    symbol: 'L',
    dimension: 'volume',
    scale: 1e-3,
    spellings: ['l', 'liter', 'litre', 'liters', 'litres', 'dm3'],
    decimals: 3,
    ucum: 'L',
  },
  { symbol: 'cm³', dimension: 'volume', scale: 1e-6, spellings: ['cm3', 'cm³', 'cc', 'ml'], decimals: 0, ucum: 'cm3' },

  {
    symbol: 'CFM',
    dimension: 'airflow',
    scale: CFM,
    spellings: ['cfm', 'ft3/min', 'ft³/min'],
    decimals: 0,
    ucum: '[cft_i]/min',
  },
  {
    symbol: 'm³/h',
    dimension: 'airflow',
    scale: 1 / 3600,
    spellings: ['m3/h', 'm³/h', 'cmh'],
    decimals: 0,
    ucum: 'm3/h',
  },
  { symbol: 'L/s', dimension: 'airflow', scale: 1e-3, spellings: ['l/s', 'lps'], decimals: 0, ucum: 'L/s' },
  { symbol: 'm³/s', dimension: 'airflow', scale: 1, spellings: ['m3/s', 'm³/s'], decimals: 3, ucum: 'm3/s' },
  {
    symbol: 'CFM per ton',
    dimension: 'specific airflow',
    scale: CFM / TON_W,
    spellings: ['cfm/ton', 'cfmperton'],
    decimals: 0,
  },
  {
    symbol: 'm³/h per kW',
    dimension: 'specific airflow',
    scale: 1 / 3600 / 1e3,
    spellings: ['m3/h/kW', 'm³/h/kW', 'm³/hperkW', 'm3/hperkW'],
    decimals: 0,
  },

  { symbol: 'ton', dimension: 'cooling capacity', scale: TON_W, spellings: ['ton', 'tons', 'tr', 'tonr'], decimals: 1 },
  {
    symbol: 'Btu/h',
    dimension: 'cooling capacity',
    scale: TON_W / 12_000,
    spellings: ['btu/h', 'btuh', 'btu/hr'],
    decimals: 0,
    ucum: '[Btu_IT]/h',
  },
  { symbol: 'kW', dimension: 'cooling capacity', scale: 1e3, spellings: ['kW', 'kilowatt'], decimals: 2, ucum: 'kW' },
  { symbol: 'W', dimension: 'cooling capacity', scale: 1, spellings: ['W', 'watt', 'watts'], decimals: 0, ucum: 'W' },

  { symbol: 'A', dimension: 'current', scale: 1, spellings: ['A', 'amp', 'amps', 'ampere'], decimals: 1, ucum: 'A' },
  { symbol: 'V', dimension: 'voltage', scale: 1, spellings: ['V', 'volt', 'volts', 'Vac'], decimals: 0, ucum: 'V' },
  {
    symbol: '% RH',
    dimension: 'relative humidity',
    scale: 0.01,
    spellings: ['%', '%rh', 'rh', 'percent'],
    decimals: 0,
    ucum: '%',
  },
  {
    symbol: 'min',
    dimension: 'duration',
    scale: 60,
    spellings: ['min', 'mins', 'minute', 'minutes'],
    decimals: 0,
    ucum: 'min',
  },
  {
    symbol: 'h',
    dimension: 'duration',
    scale: 3600,
    spellings: ['h', 'hr', 'hrs', 'hour', 'hours'],
    decimals: 1,
    ucum: 'h',
  },
  {
    symbol: 's',
    dimension: 'duration',
    scale: 1,
    spellings: ['s', 'sec', 'secs', 'second', 'seconds'],
    decimals: 0,
    ucum: 's',
  },
]

/** The units of a dimension, in the order in which they are offered. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS.filter((unit) => unit.dimension === dimension)
}

/** The unit of `dimension` that `spelling` names, if any. */
export function findUnit(spelling: string, dimension: Dimension): Unit | undefined {
  const exact = unitsOf(dimension).find((u) => u.symbol === spelling)
  if (exact) return exact
  const wanted = normalise(spelling)
  return unitsOf(dimension).find((u) => [u.symbol, ...u.spellings].some((s) => normalise(s) === wanted))
}

/** SI from a number in `unit`, and back. */
export const toSi = (value: number, unit: Unit): number => value * unit.scale + (unit.offset ?? 0)
export const fromSi = (si: number, unit: Unit): number => (si - (unit.offset ?? 0)) / unit.scale

function normalise(spelling: string): string {
  return spelling.toLowerCase().replace(/[\s.°_]/g, '')
}
