import { type Dimension, fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { missing, unreadable } from './failure.ts'
import { shorten } from './shorten.ts'
import { type Accuracy, typedReading } from './typed-reading.ts'

/** Reads one value of a file, or tells everything that is wrong with it, by its path. */
export type Reader<Value> = (input: unknown, field: string) => Result<Value, readonly Problem[]>

/** Reads JSON text; what it holds is the business of a reader. */
export function parseJson(json: string, what: string): Result<unknown, readonly Problem[]> {
  try {
    // Some editors put a byte order mark before the text, which JSON does not know.
    return ok(JSON.parse(json.replace(/^\uFEFF/, '')))
  } catch (error) {
    return fail([unreadable(what, json, `JSON (${error instanceof Error ? error.message.slice(0, 100) : 'not JSON'})`)])
  }
}

type Readers = Readonly<Record<string, Reader<unknown>>>
type ValueOf<Read> = Read extends Reader<infer Value> ? Value : never
type Fields<Needed extends Readers, Optional extends Readers> = {
  readonly [Name in keyof Needed]: ValueOf<Needed[Name]>
} & { readonly [Name in keyof Optional]?: ValueOf<Optional[Name]> }

/** An object of named fields. One that is not known is a problem: a misspelt one would go unnoticed. */
export function fields<Needed extends Readers, Optional extends Readers>(
  needed: Needed,
  optional: Optional,
): Reader<Fields<Needed, Optional>> {
  const readers: Readers = { ...needed, ...optional }
  const names = Object.keys(readers).join(', ')
  return (input, field) => {
    if (!isRecord(input)) return fail([unreadable(field, quoted(input), `an object with ${names}`)])
    const values: [string, unknown][] = []
    const problems: Problem[] = []
    for (const [name, value] of Object.entries(input)) {
      const path = pathTo(field, name)
      const read = Object.hasOwn(readers, name)
        ? readers[name]!(value, path)
        : fail([{ kind: 'unknown', field: path, value: shorten(quoted(value)), accepted: `one of ${names}` }] as const)
      if (read.ok) values.push([name, read.value])
      else problems.push(...read.error)
    }
    const absent = Object.keys(needed).filter((name) => !Object.hasOwn(input, name))
    problems.push(...absent.map((name) => missing(pathTo(field, name), 'a value')))
    return problems.length > 0 ? fail(problems) : ok(Object.fromEntries(values) as Fields<Needed, Optional>)
  }
}

/** An object whose `kind` says which fields it has. */
export function variant<Kinds extends Readers>(kinds: Kinds): Reader<ValueOf<Kinds[keyof Kinds]>> {
  return (input, field) => {
    const kind = isRecord(input) && Object.hasOwn(input, 'kind') ? input.kind : undefined
    const read = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined
    if (read) return read(input, field) as Result<ValueOf<Kinds[keyof Kinds]>, readonly Problem[]>
    const accepted = `one of ${Object.keys(kinds).join(', ')}`
    return fail([
      kind === undefined ? missing(pathTo(field, 'kind'), accepted) : wrong(`${field}.kind`, kind, accepted),
    ])
  }
}

export function list<Value>(read: Reader<Value>, most: number): Reader<readonly Value[]> {
  return (input, field) => {
    if (!Array.isArray(input) || input.length > most) {
      return fail([wrong(field, input, `a list of at most ${most}`)])
    }
    const parts = input.map((part: unknown, i) => read(part, `${field}[${i}]`))
    const problems = parts.flatMap((part) => (part.ok ? [] : part.error))
    return problems.length > 0 ? fail(problems) : ok(parts.flatMap((part) => (part.ok ? [part.value] : [])))
  }
}

const LONGEST_TEXT = 200

export const text: Reader<string> = (input, field) =>
  typeof input === 'string' && input.trim() !== '' && input.length <= LONGEST_TEXT
    ? ok(input)
    : fail([wrong(field, input, `text in quotes, at most ${LONGEST_TEXT} characters`)])

export const truth: Reader<boolean> = (input, field) =>
  typeof input === 'boolean' ? ok(input) : fail([wrong(field, input, 'true or false')])

export const number: Reader<number> = (input, field) =>
  typeof input === 'number' && Number.isFinite(input) ? ok(input) : fail([wrong(field, input, 'a finite number')])

/** One of a few words or numbers. */
export const choice =
  <const Choice extends string | number>(...choices: readonly Choice[]): Reader<Choice> =>
  (input, field) => {
    const found = choices.find((each) => each === input)
    return found === undefined ? fail([wrong(field, input, choices.join(' or '))]) : ok(found)
  }

/** A quantity as it is typed, with its unit and perhaps a ±. */
export const typed =
  <D extends Dimension>(dimension: D, plain?: Accuracy): Reader<Quantity<D>> =>
  (input, field) => {
    if (typeof input !== 'string') return fail([wrong(field, input, 'a number with a unit, in quotes')])
    const read = typedReading(input, dimension, field, plain)
    return read.ok ? read : fail([read.error])
  }

const isRecord = (input: unknown): input is Readonly<Record<string, unknown>> =>
  typeof input === 'object' && input !== null && !Array.isArray(input)

const wrong = (field: string, input: unknown, accepted: string) => unreadable(field, quoted(input), accepted)

/** A value in a few words. A list or an object is not written out: it may be of any depth and size. */
function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`
  return isRecord(value) ? 'an object' : String(value)
}

/** `cylinders[0].tare`; a key that is no plain word stands in quotes and brackets. The name of the file is left out. */
function pathTo(field: string, name: string): string {
  const key = /^\w{1,60}$/.test(name) ? name : `["${name.slice(0, 60)}"]`
  return /[.[]|^\w+$/.test(field) ? `${field}.${key}` : key
}
