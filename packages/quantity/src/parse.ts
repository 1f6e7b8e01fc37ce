import { readNumber } from './number.ts'
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
  'cooling capacity': [0, 1e9],
  current: [0, 1e5],
  voltage: [0, 1e6],
  'relative humidity': [0, 1],
  duration: [0, 1e9],
}

/** Compound amounts people write in two units: `14 lb 6 oz`, `3 ft 4 in`, `1 h 20 min`. */
const COMPOUND = /^(\d[\d.,\s/]*?)\s*(lbs?|ft|h|hr|'|#)[\s,]+(\d[\d.,\s/]*?)\s*(oz|in|min|")$/i
const NUMBER_AND_UNIT = /^([-+−–]?[\d.,][\d.,\s'’\u00a0\u202f/-]*(?:e[-+]?\d+(?![a-z]))?)\s*(.*)$/is

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
  const field = options.field ?? dimensions[0]!
  const unreadable = fail({ kind: 'unreadable', field, value: shorten(text), accepted: expected(dimensions) } as const)
  const trimmed = text.trim()

  const compound = COMPOUND.exec(trimmed)
  if (compound) {
    const [, a = '', unitA = '', b = '', unitB = ''] = compound
    const first = parse(`${a} ${unitA}`, dimensions, { field })
    const second = parse(`${b} ${unitB}`, dimensions, { field })
    if (!first.ok) return first
    if (!second.ok) return second
    return inBounds(quantity(first.value.dimension, first.value.si + second.value.si), field, options.assume)
  }

  const match = NUMBER_AND_UNIT.exec(trimmed)
  if (!match) return unreadable
  const [, digits = '', spelling = ''] = match
  const unit = spelling === '' ? options.assume : firstUnit(spelling, dimensions)
  if (unit === undefined) return unreadable
  const number = readNumber(digits)
  switch (number.kind) {
    case 'none':
      return unreadable
    case 'two': {
      const { either, or } = number
      return fail({
        kind: 'ambiguous',
        field,
        value: shorten(text),
        accepted: `${either} ${unit.symbol} or ${or} ${unit.symbol}`,
      })
    }
    case 'one':
      return inBounds(quantity(unit.dimension as D, toSi(number.value, unit)), field, unit)
  }
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
  typed: Unit | undefined,
): Result<Quantity<D>, Problem> {
  const [min, max] = BOUNDS[q.dimension]
  if (q.si >= min && q.si <= max) return ok(q)
  const unit = typed ?? unitsOf(q.dimension)[0]!
  const [low, high] = [fromSi(min, unit), fromSi(max, unit)].sort((a, b) => a - b) as [number, number]
  return fail({
    kind: 'out-of-range',
    field,
    value: fromSi(q.si, unit),
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
