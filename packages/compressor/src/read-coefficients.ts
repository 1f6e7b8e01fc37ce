import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { Compressor } from './compressor.ts'
import { readCells } from './csv-cells.ts'
import { type DewUnit, toKelvin } from './dew-unit.ts'
import { readNumber } from './plain-number.ts'
import { RATED_QUANTITIES, RATED_UNITS, type RatedQuantity, siPerUnit } from './rated-quantity.ts'
import { TERMS } from './rating-polynomial.ts'
import { boxRegion, type Region } from './region.ts'

/**
 * Reads a compressor from CSV as makers print it, one coefficient a line:
 *
 *     °F,mass flow lb/h,power W
 *     C1,217.3,-561.4
 *     …
 *     C10,-0.0000808,0.0025
 *     suction,30,55
 *     discharge,90,140
 *     return gas superheat,20
 *     voltage,230
 *     phases,1
 *
 * The first cell names the unit of all temperatures: coefficients for one unit are nonsense with the other. The range
 * of use is needed because a polynomial is never used beyond it; voltage and phases are needed for amps only.
 *
 * @returns the compressor; else the first line that is missing or cannot be read
 */
export function readCoefficients(text: string): Result<Compressor, Problem> {
  const table = readCells(text, 'coefficients')
  if (!table.ok) return table
  const [heading = [], ...lines] = table.value
  const dewUnit = dewUnitNamed(heading[0] ?? '')
  if (!dewUnit)
    return fail(unreadable('first cell of the heading', heading[0] ?? '', '°F or °C, the unit of the dew temperatures'))
  const columns = heading.slice(1).map(rated)
  const badColumn = columns.indexOf(undefined)
  if (columns.length === 0 || badColumn >= 0) {
    return fail(unreadable('heading', heading[badColumn + 1] ?? '', headingsAccepted()))
  }
  const rows = new Map(lines.map(([name = '', ...cells]) => [name.toLowerCase(), cells]))
  const numbers = (name: string, count: number) => readRow(rows, name, count)

  const coefficients: (readonly number[])[] = []
  for (const i of TERMS.keys()) {
    const row = numbers(`c${i + 1}`, columns.length)
    if (!row.ok) return row
    coefficients.push(row.value)
  }
  const region = range(numbers, dewUnit)
  if (!region.ok) return region
  const returnGas = gas(rows, numbers, dewUnit)
  if (!returnGas.ok) return returnGas
  const motor = supply(rows, numbers)
  if (!motor.ok) return motor
  const ratings = columns.map((column, k) => ({
    ...column!,
    dewUnit,
    coefficients: coefficients.map((row) => row[k]!),
    region: region.value,
  }))
  return ok({ ratings, returnGas: returnGas.value, ...(motor.value ? { motor: motor.value } : {}) })
}

type Rows = ReadonlyMap<string, readonly string[]>
type ReadRow = (name: string, count: number) => Result<readonly number[], Problem>

function dewUnitNamed(cell: string): DewUnit | undefined {
  const letter = /^(?:°|deg)?\s*([fc])$/i.exec(cell)?.[1]?.toUpperCase()
  return letter === 'F' ? '°F' : letter === 'C' ? '°C' : undefined
}

/** `mass flow lb/h`, `power (W)`: the quantity and one of its units. */
function rated(cell: string): { readonly what: RatedQuantity; readonly unit: string } | undefined {
  const what = RATED_QUANTITIES.find((name) => cell.toLowerCase().startsWith(name))
  const unit =
    what &&
    cell
      .slice(what.length)
      .replace(/[()[\]]/g, '')
      .trim()
  return what && unit && siPerUnit(what, unit) !== undefined ? { what, unit } : undefined
}

function headingsAccepted(): string {
  return RATED_QUANTITIES.map((what) => `${what} in ${Object.keys(RATED_UNITS[what]).join(', ')}`).join('; ')
}

function readRow(rows: Rows, name: string, count: number): Result<readonly number[], Problem> {
  const cells = rows.get(name)
  if (!cells) return fail({ kind: 'missing', field: `line “${name}”`, value: 'nothing', accepted: `${count} numbers` })
  const values = cells.slice(0, count).map(readNumber)
  const bad = values.indexOf(undefined)
  if (values.length < count || bad >= 0) {
    return fail(unreadable(`line “${name}”`, cells[bad] ?? '', `${count} numbers`))
  }
  return ok(values as readonly number[])
}

function range(numbers: ReadRow, dewUnit: DewUnit): Result<Region, Problem> {
  const suction = numbers('suction', 2)
  if (!suction.ok) return suction
  const discharge = numbers('discharge', 2)
  if (!discharge.ok) return discharge
  const inKelvin = ([a, b]: readonly number[]) => [toKelvin(a!, dewUnit), toKelvin(b!, dewUnit)] as const
  const [s, d] = [inKelvin(suction.value), inKelvin(discharge.value)]
  const problem =
    outOfRange('suction, from', s[0], 193.15, 373.15, 'K') ??
    outOfRange('suction, to', s[1], s[0], 373.15, 'K') ??
    outOfRange('discharge, from', d[0], 193.15, 373.15, 'K') ??
    outOfRange('discharge, to', d[1], d[0], 373.15, 'K')
  return problem ? fail(problem) : ok(boxRegion(s, d))
}

function gas(rows: Rows, numbers: ReadRow, dewUnit: DewUnit): Result<Compressor['returnGas'], Problem> {
  if (rows.has('return gas temperature')) {
    const row = numbers('return gas temperature', 1)
    if (!row.ok) return row
    const temperature_K = toKelvin(row.value[0]!, dewUnit)
    const problem = outOfRange('return gas temperature', temperature_K, 193.15, 373.15, 'K')
    return problem ? fail(problem) : ok({ kind: 'temperature', temperature_K })
  }
  const row = numbers('return gas superheat', 1)
  if (!row.ok) return row
  const superheat_K = row.value[0]! / (dewUnit === '°F' ? 1.8 : 1)
  const problem = outOfRange('return gas superheat', superheat_K, 0, 100, 'K')
  return problem ? fail(problem) : ok({ kind: 'superheat', superheat_K })
}

function supply(rows: Rows, numbers: ReadRow): Result<Compressor['motor'], Problem> {
  if (!rows.has('voltage') && !rows.has('phases')) return ok(undefined)
  const voltage = numbers('voltage', 1)
  if (!voltage.ok) return voltage
  const phases = numbers('phases', 1)
  if (!phases.ok) return phases
  const [voltage_V = Number.NaN] = voltage.value
  const problem = outOfRange('voltage', voltage_V, 20, 1000, 'V')
  if (problem) return fail(problem)
  const [count] = phases.value
  if (count !== 1 && count !== 3) return fail(unreadable('phases', String(count), '1 or 3'))
  return ok({ voltage_V, phases: count })
}

function unreadable(field: string, value: string, accepted: string): Problem {
  return { kind: 'unreadable', field, value: value.length > 60 ? `${value.slice(0, 60)}…` : value, accepted }
}
