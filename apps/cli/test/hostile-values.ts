import { readdirSync, readFileSync } from 'node:fs'
import { refrigerantNames } from '@chargewright/refrigerant'
import fc from 'fast-check'

/** Where the fields of a point have answers. */
const RANGE = {
  pressure_Pa: [1e4, 4e6],
  temperature_K: [200, 400],
  quality: [0, 1],
  lost: [0, 1],
  fill: [0, 1],
  top_up_to: [0, 1],
} as const

type Field = keyof typeof RANGE

/** Numbers that people and programs get wrong: signs, sizes, what is no number. */
const numbers = fc.oneof(
  fc.double(),
  fc.constantFrom(0, -0, -1, 5e-324, Number.MAX_VALUE, -101_325, 273.15, 1e-9, 1, 1e5),
)

const UNITS = ['psig', 'psia', 'bar', '°F', '°C', 'K', 'oz', 'ton', 'CFM', 'min', '% RH', 'ft', '']
const SLIPS = ['', ' ', '1,234 psig', '-500 psig', '30 inHg vac', 'NaN °F', '9'.repeat(500), '{0}', '__proto__']

/** Entries as typed. */
export const typed = fc.oneof(
  fc.tuple(fc.integer({ min: -50, max: 400 }), fc.constantFrom(...UNITS)).map((parts) => parts.join(' ')),
  fc.tuple(numbers, fc.constantFrom(...UNITS)).map((parts) => parts.join(' ')),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(...SLIPS),
)

const names = fc.oneof(
  { arbitrary: fc.constantFrom(...refrigerantNames()), weight: 8 },
  { arbitrary: fc.constantFrom('R-410', 'r 22', 'propane', '', '410', '__proto__', 'toString', 'R-9999Z'), weight: 1 },
  { arbitrary: fc.string({ unit: 'binary', maxLength: 20 }), weight: 1 },
)

const anything = fc.oneof(
  numbers,
  typed,
  names,
  fc.constantFrom(null, true, [], {}, [[[]]]),
  fc.jsonValue({ maxDepth: 2 }),
)

/** Nineteen in twenty of the kind expected, one of any other. */
const mostly = <T>(expected: fc.Arbitrary<T>): fc.Arbitrary<unknown> =>
  fc.oneof({ arbitrary: expected, weight: 19 }, { arbitrary: anything, weight: 1 })

/** JSON has no way to write these, so a program that has them writes something else. */
const asText = (value: unknown) => JSON.stringify(value)?.replace('1.7976931348623157e+308', '1e999') ?? 'undefined'

/** A line of a batch that asks for a point of a refrigerant by one of these sets of fields, or is damaged. */
export function pointLine(...sets: readonly (readonly Field[])[]): fc.Arbitrary<string> {
  const value = (field: Field) => {
    const [min, max] = RANGE[field]
    return fc.oneof({ arbitrary: fc.double({ min, max, noNaN: true }), weight: 7 }, { arbitrary: numbers, weight: 1 })
  }
  const question = (fields: readonly Field[]) =>
    fc.record({
      refrigerant: mostly(names),
      ...Object.fromEntries(fields.map((field) => [field, mostly(value(field))])),
    })
  const keys = fc.constantFrom('refrigerant', 'pressure_Pa', 'temperature_K', 'quality', 'pressure', '__proto__')
  return fc.oneof(
    { arbitrary: fc.oneof(...sets.map(question)).map(asText), weight: 17 },
    { arbitrary: fc.dictionary(keys, anything).map(asText), weight: 1 },
    { arbitrary: anything.map(asText), weight: 1 },
    { arbitrary: fc.string({ unit: 'binary' }), weight: 1 },
  )
}

/** The flags of a point, as typed. */
export const flags = fc.record(
  { pressure: typed, temperature: typed, quality: typed, altitude: typed },
  { requiredKeys: [] },
)

/** Half of the damage is to what was typed, which is where a person slips; the rest to anything. */
const damage = fc.record({
  place: fc.nat(),
  how: fc.constantFrom('retype', 'retype', 'retype', 'retype', 'replace', 'rename', 'remove', 'repeat'),
  value: anything,
  text: typed,
})

/** A file with a few things in it retyped, replaced, renamed, removed or repeated; now and then cut off. */
export function damagedJson(files: readonly string[]): fc.Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...files), fc.array(damage, { minLength: 1, maxLength: 3 }), fc.nat({ max: 19 }), fc.nat())
    .map(([file, damages, chance, cut]) => {
      const damaged: unknown = JSON.parse(file)
      for (const each of damages) apply(damaged, each)
      const line = asText(damaged)
      return chance === 0 ? line.slice(0, cut % line.length) : line
    })
}

const visits = readdirSync('examples').filter((file) => file.endsWith('.json'))

export const visitLine = damagedJson(visits.map((file) => readFileSync(`examples/${file}`, 'utf8')))

/** A table with a few of its cells or lines replaced, removed or repeated; now and then cut off. */
export function damagedTable(files: readonly string[]): fc.Arbitrary<string> {
  const harm = fc.record({
    line: fc.nat(),
    cell: fc.nat(),
    how: fc.constantFrom('replace', 'replace', 'replace', 'remove', 'repeat'),
    text: fc.oneof(typed, numbers.map(String), fc.constantFrom('', '-', '1,5', 'C11', 'micron', 'lb/h')),
  })
  return fc
    .tuple(fc.constantFrom(...files), fc.array(harm, { maxLength: 3 }), fc.nat({ max: 19 }), fc.nat())
    .map(([file, harms, chance, cut]) => {
      const lines = file.split('\n')
      for (const { line, cell, how, text } of harms) {
        const i = line % lines.length
        const cells = (lines[i] ?? '').split(',')
        if (how === 'replace') lines[i] = cells.with(cell % cells.length, text).join(',')
        else lines.splice(i, how === 'remove' ? 1 : 0, ...(how === 'remove' ? [] : [lines[i] ?? '']))
      }
      const table = lines.join('\n')
      return chance === 0 ? table.slice(0, cut % Math.max(table.length, 1)) : table
    })
}

/** Flags: six in seven hold one of the texts that belong there, the others anything that can be typed. */
export function flagsLike<Name extends string>(
  given: Readonly<Record<Name, readonly string[]>>,
): fc.Arbitrary<Record<Name, string>> {
  const entries = Object.entries<readonly string[]>(given).map(([name, texts]) => [
    name,
    fc.oneof({ arbitrary: fc.constantFrom(...texts), weight: 6 }, { arbitrary: typed, weight: 1 }),
  ])
  return fc.record(Object.fromEntries(entries)) as fc.Arbitrary<Record<Name, string>>
}

/** The same, each of them given or not. */
export function someFlagsLike<Name extends string>(
  given: Readonly<Record<Name, readonly string[]>>,
): fc.Arbitrary<Partial<Record<Name, string>>> {
  const absent = fc.subarray(Object.keys(given) as Name[])
  return fc
    .tuple(flagsLike(given), absent)
    .map(([all, names]) => Object.fromEntries(names.map((name) => [name, all[name]])) as Partial<Record<Name, string>>)
}

type Damage = typeof damage extends fc.Arbitrary<infer T> ? T : never
type Slot = { readonly container: Record<string, unknown>; readonly key: string }

function apply(visit: unknown, { place, how, value, text }: Damage): void {
  const slots = slotsOf(visit).filter((slot) => how !== 'retype' || isTyped(slot))
  if (slots.length === 0) return
  const { container, key } = slots[place % slots.length]!
  const before = container[key]
  switch (how) {
    case 'retype':
      container[key] = text
      break
    case 'replace':
      container[key] = value
      break
    case 'rename':
      container[`${key}x`] = before
      delete container[key]
      break
    case 'remove':
      if (Array.isArray(container)) container.splice(Number(key), 1)
      else delete container[key]
      break
    case 'repeat':
      if (Array.isArray(container)) container.push(before)
      break
  }
}

const NOT_TYPED: readonly string[] = ['id', 'at', 'about', 'corrects']

/** A number with its unit, or a name with a number. */
function isTyped({ container, key }: Slot): boolean {
  const value = container[key]
  return typeof value === 'string' && !NOT_TYPED.includes(key) && /^\S*\d/.test(value)
}

function slotsOf(value: unknown): readonly Slot[] {
  if (typeof value !== 'object' || value === null) return []
  const container = value as Record<string, unknown>
  return Object.keys(container).flatMap((key) => [{ container, key }, ...slotsOf(container[key])])
}
