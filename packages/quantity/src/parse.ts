import { DIGIT, readNumber } from './number.ts'
import type { Problem } from './problem.ts'
import { type Dimension, type Quantity, quantity } from './quantity.ts'
import { fail, ok, type Result } from './result.ts'
import { findUnit, fromSi, toSi, type Unit, unitsOf } from './unit.ts'

/** Physical bounds in SI: outside them a value is a slip of the pen, not an unusual system. */
const BOUNDS: Readonly<Record<Dimension, readonly [min: number, max: number]>> = {
  'absolute pressure': [0, 1e8],
  'gauge pressure': [-1.1e5, 1e8],
  'pressure difference': [-1e8, 1e8],
  temperature: [0, 2000],
  'temperature difference': [-1000, 1000],
  mass: [0, 1e6],
  length: [0, 1e5],
  'mass per length': [0, 1e3],
  elevation: [-5000, 11_000],
  volume: [0, 1e6],
  airflow: [0, 1e5],
  'specific airflow': [0, 1],
  velocity: [0, 1000],
  'mass flow': [0, 1e4],
  power: [0, 1e9],
  'cooling capacity': [0, 1e9],
  'specific enthalpy': [-1e8, 1e8],
  current: [0, 1e5],
  voltage: [0, 1e6],
  'relative humidity': [0, 1],
  duration: [0, 1e9],
}

// Neither pattern has two ways to match the same text, so that a long text takes time in proportion to its length.
const NUMBER_AND_UNIT = new RegExp(
  `^([-+]?\\s*[${DIGIT}.,](?:[${DIGIT}.,\\s'/-]*[${DIGIT}.,])?(?:e[-+]?\\d+)?)\\s*(.*)$`,
  'is',
)
const TWO_AMOUNTS = new RegExp(
  `^([-+]?)\\s*([${DIGIT}][${DIGIT}.,\\s/]*)([a-z'#]+)\\.?[\\s,]*([${DIGIT}][${DIGIT}.,\\s/]*)([a-z"]+)\\.?$`,
  'i',
)

export interface ParseOptions {
  /** Name of the field in the problem, if there is one. */
  readonly field?: string
  /** Unit assumed for a bare number, as a keypad with a unit key needs; without it a bare number is a problem. */
  readonly assume?: Unit
}

/**
 * Reads a quantity as a technician types it (`72 psig`, `4,9 bar`, `29.5 inHg vac`, `-3 °C`, `14 lb 6 oz`, `6 1/4 oz`).
 * Where several dimensions are accepted (a gauge field also takes `psia`) the first one with such a unit is taken, so
 * that a bare `psi` or `bar` on a gauge field is a gauge pressure.
 *
 * @returns the value in SI without uncertainty; else `unreadable`, `ambiguous` or `out-of-range` naming the field
 */
export function parse<D extends Dimension>(
  text: string,
  accepted: D | readonly D[],
  options: ParseOptions = {},
): Result<Quantity<D>, Problem> {
  const dimensions: readonly D[] = typeof accepted === 'string' ? [accepted] : accepted
  const { field = dimensions[0]!, assume } = options
  const typed = text.trim().replace(/[−–]/g, '-').replace(/[’′]/g, "'").replace(/[”″]/g, '"')

  const amounts = twoAmounts(typed, dimensions)
  if (!amounts) return parseOne(typed, dimensions, field, assume)
  const larger = parseOne(amounts.larger, [amounts.dimension], field)
  const smaller = parseOne(amounts.smaller, [amounts.dimension], field)
  if (!larger.ok) return larger
  if (!smaller.ok) return smaller
  const sum = larger.value.si + smaller.value.si
  return inBounds(quantity(amounts.dimension, sum), field, fromSi(sum, amounts.unit), amounts.unit)
}

function parseOne<D extends Dimension>(
  text: string,
  dimensions: readonly D[],
  field: string,
  assume?: Unit,
): Result<Quantity<D>, Problem> {
  const [, digits = '', spelling = ''] = NUMBER_AND_UNIT.exec(text) ?? []
  const unit = spelling === '' ? assume : firstUnit(spelling, dimensions)
  const number = readNumber(digits)
  if (unit === undefined || number.kind === 'none') {
    return fail({ kind: 'unreadable', field, value: shorten(text), accepted: expected(dimensions) })
  }
  const twoWays = (either: string, or: string) =>
    fail({ kind: 'ambiguous', field, value: shorten(text), accepted: `${either} or ${or}` } as const)
  if (number.kind === 'two') return twoWays(`${number.either} ${unit.symbol}`, `${number.or} ${unit.symbol}`)
  // Below the atmosphere by a negative amount: some mean a vacuum by the sign, some by the unit.
  if (unit.scale < 0 && number.value < 0) return twoWays(`${-number.value} ${unit.symbol}`, 'a gauge pressure')
  return inBounds(quantity(unit.dimension as D, toSi(number.value, unit)), field, number.value, unit)
}

/** Amounts that people write in two units, the larger first: `14 lb 6 oz`, `3 ft 4 in`, `1 h 20 min`, `3 kg 200 g`. */
const AMOUNTS: readonly Dimension[] = ['mass', 'length', 'duration']

function twoAmounts<D extends Dimension>(text: string, dimensions: readonly D[]) {
  const [, sign, first, firstSpelling = '', second, secondSpelling = ''] = TWO_AMOUNTS.exec(text) ?? []
  for (const dimension of dimensions.filter((d) => AMOUNTS.includes(d))) {
    const unit = findUnit(firstSpelling, dimension)
    const part = findUnit(secondSpelling, dimension)
    if (unit && part && part.scale < unit.scale) {
      const larger = `${sign}${first} ${unit.symbol}`
      return { dimension, unit, larger, smaller: `${sign}${second} ${part.symbol}` }
    }
  }
  return undefined
}

function firstUnit(spelling: string, dimensions: readonly Dimension[]): Unit | undefined {
  for (const dimension of dimensions) {
    const unit = findUnit(spelling, dimension)
    if (unit) return unit
  }
  return undefined
}

function inBounds<D extends Dimension>(
  q: Quantity<D>,
  field: string,
  value: number,
  unit: Unit,
): Result<Quantity<D>, Problem> {
  const [min, max] = BOUNDS[q.dimension]
  if (q.si >= min && q.si <= max) return ok(q)
  const [low, high] = [fromSi(min, unit), fromSi(max, unit)].sort((a, b) => a - b) as [number, number]
  return fail({
    kind: 'out-of-range',
    field,
    value,
    min: Number(low.toPrecision(6)),
    max: Number(high.toPrecision(6)),
    unit: unit.symbol,
  })
}

function expected(dimensions: readonly Dimension[]): string {
  const symbols = dimensions.flatMap((d) => unitsOf(d).map((u) => u.symbol))
  return `a number with a unit: ${[...new Set(symbols)].join(', ')}`
}

/** Hostile input is quoted back, but not all of it. */
function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
