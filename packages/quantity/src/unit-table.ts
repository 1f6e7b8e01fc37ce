import type { Dimension } from './quantity.ts'
import type { Unit } from './unit.ts'

// Exact by definition (NIST SP 811:2008, appendix B): international pound and inch, standard gravity, torr, Btu_IT.
// The ton of refrigeration is 12 000 Btu_IT/h.
const LB = 0.45359237
const INCH = 0.0254
const GRAVITY = 9.80665
const PSI = (LB * GRAVITY) / INCH ** 2
const MICRON = 101_325 / 760_000
const FT = 12 * INCH
const CFM = FT ** 3 / 60
const TON = (12_000 * 1055.05585262) / 3600
const RANKINE = 5 / 9
/** The International Table Btu per pound is 2326 J/kg, which is how that Btu is defined. */
const BTU_PER_LB = 2326
// Conventional columns (NIST SP 811:2008, table B.8): mercury at 0 °C, water of 1000 kg/m³.
const INHG = 3386.389
const INH2O = 1000 * GRAVITY * INCH

/**
 * Every unit the product reads and writes, in the order in which they are offered. Within one dimension a spelling is
 * unique; across dimensions it may repeat (`psi` is a gauge reading or a difference, as the field expects).
 *
 * A vacuum counts downwards from the atmosphere, so its scale is negative. A bare `inHg` is a vacuum where a gauge
 * reading is expected and a barometer reading where only an absolute pressure is.
 */
export const UNITS: readonly Unit[] = [
  ...pressures('gauge pressure', 'g', (u) => `${u} ${u}gauge ${u}(g)`),
  unit('gauge pressure', 'inHg vac', -INHG, 1, 'inHg inHgvacuum "Hg "Hgvac'),
  ...pressures('absolute pressure', 'a', (u) => `${u}abs ${u}absolute ${u}(a)`),
  unit('absolute pressure', 'micron', MICRON, 0, 'microns mTorr umHg µmHg', 'um[Hg]'),
  unit('absolute pressure', 'inHg abs', INHG, 2, 'inHg inHga inHgabsolute "Hg', "[in_i'Hg]"),
  unit('absolute pressure', 'hPa', 100, 2, 'hPaa hPaabs mbara mbarabs', 'hPa'),
  ...pressures('pressure difference', '', (u) => `${u}d`),
  unit('pressure difference', 'inH2O', INH2O, 2, 'inwc inwg "wc "wg "H2O', "[in_i'H2O]"),

  { ...unit('temperature', '°F', RANKINE, 1, 'degF fahrenheit', '[degF]'), offset: 459.67 * RANKINE },
  { ...unit('temperature', '°C', 1, 1, 'degC celsius', 'Cel'), offset: 273.15 },
  unit('temperature', 'K', 1, 2, 'kelvin', 'K'),
  unit('temperature difference', '°F', RANKINE, 1, 'degF fahrenheit R degR', '[degR]'),
  unit('temperature difference', 'K', 1, 1, 'kelvin C degC celsius', 'K'),

  unit('mass', 'oz', LB / 16, 1, 'ounce ounces', '[oz_av]'),
  unit('mass', 'lb', LB, 2, 'lbs pound pounds #', '[lb_av]'),
  unit('mass', 'g', 1e-3, 0, 'gram grams gramme grammes', 'g'),
  unit('mass', 'kg', 1, 3, 'kilo kilos kilogram kilograms', 'kg'),

  unit('length', 'ft', FT, 1, "foot feet '", '[ft_i]'),
  unit('length', 'in', INCH, 3, 'inch inches "', '[in_i]'),
  unit('length', 'm', 1, 2, 'metre meter metres meters', 'm'),
  unit('length', 'mm', 1e-3, 1, 'millimetre millimeter millimetres millimeters', 'mm'),
  unit('elevation', 'ft', FT, 0, "foot feet '", '[ft_i]'),
  unit('elevation', 'm', 1, 0, 'metre meter metres meters', 'm'),

  unit('mass per length', 'oz/ft', LB / 16 / FT, 2, 'ozperft ounces/foot', '[oz_av]/[ft_i]'),
  unit('mass per length', 'g/m', 1e-3, 1, 'gperm', 'g/m'),

  unit('volume', 'in³', INCH ** 3, 2, 'cuin cubicinch cubicinches', '[cin_i]'),
  unit('volume', 'ft³', FT ** 3, 3, 'cuft cubicfoot cubicfeet', '[cft_i]'),
  unit('volume', 'L', 1e-3, 3, 'liter litre liters litres dm³', 'L'),
  unit('volume', 'cm³', 1e-6, 0, 'cc mL', 'cm3'),
  unit('volume', 'm³', 1, 2, 'cubicmetre cubicmeter cubicmetres cubicmeters', 'm3'),

  unit('airflow', 'CFM', CFM, 0, 'ft³/min', '[cft_i]/min'),
  unit('airflow', 'm³/h', 1 / 3600, 0, 'cmh', 'm3/h'),
  unit('airflow', 'L/s', 1e-3, 0, 'lps', 'L/s'),
  unit('airflow', 'm³/s', 1, 3, '', 'm3/s'),
  unit('specific airflow', 'CFM per ton', CFM / TON, 0, 'cfm/ton'),
  unit('specific airflow', 'm³/h per kW', 1 / 3600 / 1e3, 0, 'm³/h/kW'),
  unit('velocity', 'ft/min', FT / 60, 0, 'fpm ft/m', '[ft_i]/min'),
  unit('velocity', 'm/s', 1, 2, 'mps', 'm/s'),
  unit('mass flow', 'lb/h', LB / 3600, 1, 'lb/hr lbs/h pph', '[lb_av]/h'),
  unit('mass flow', 'kg/h', 1 / 3600, 1, 'kg/hr', 'kg/h'),
  unit('mass flow', 'g/s', 1e-3, 2, '', 'g/s'),
  unit('mass flow', 'kg/s', 1, 4, '', 'kg/s'),
  unit('power', 'W', 1, 0, 'watt watts', 'W'),
  unit('power', 'kW', 1e3, 2, 'kilowatt kilowatts', 'kW'),

  unit('cooling capacity', 'ton', TON, 1, 'tons TR tonR'),
  unit('cooling capacity', 'Btu/h', TON / 12_000, 0, 'btuh btu/hr', '[Btu_IT]/h'),
  unit('cooling capacity', 'kW', 1e3, 2, 'kilowatt kilowatts', 'kW'),
  unit('cooling capacity', 'W', 1, 0, 'watt watts', 'W'),

  unit('specific enthalpy', 'Btu/lb', BTU_PER_LB, 1, 'btu/lbm', '[Btu_IT]/[lb_av]'),
  unit('specific enthalpy', 'kJ/kg', 1e3, 1, '', 'kJ/kg'),

  unit('current', 'A', 1, 1, 'amp amps ampere amperes', 'A'),
  unit('voltage', 'V', 1, 0, 'volt volts Vac', 'V'),
  unit('relative humidity', '%', 0.01, 0, '%RH RH percent %HR HR', '%'),
  unit('duration', 'min', 60, 0, 'mins minute minutes', 'min'),
  unit('duration', 'h', 3600, 1, 'hr hrs hour hours', 'h'),
  unit('duration', 's', 1, 0, 'sec secs second seconds', 's'),
]

function unit(
  dimension: Dimension,
  symbol: string,
  scale: number,
  decimals: number,
  spellings: string,
  ucum?: string,
): Unit {
  const words = spellings.split(' ').filter((word) => word !== '')
  const row = { symbol, dimension, scale, decimals, spellings: words }
  return ucum === undefined ? row : { ...row, ucum }
}

/** The pressure units that come in all three dimensions, set apart by a suffix: psig, psia, psi; bar g, bar a, bar. */
function pressures(
  dimension: 'gauge pressure' | 'absolute pressure' | 'pressure difference',
  suffix: 'g' | 'a' | '',
  spell: (unit: string) => string,
): readonly Unit[] {
  const row = (name: string, scale: number, decimals: number, code: string) => {
    const symbol = name === 'psi' ? `psi${suffix}` : `${name} ${suffix}`.trim()
    return unit(dimension, symbol, scale, decimals, spell(name), dimension === 'gauge pressure' ? undefined : code)
  }
  return [
    row('psi', PSI, 1, '[psi]'),
    row('bar', 1e5, 2, 'bar'),
    row('kPa', 1e3, 0, 'kPa'),
    row('MPa', 1e6, 3, 'MPa'),
    row('Pa', 1, 0, 'Pa'),
  ]
}
