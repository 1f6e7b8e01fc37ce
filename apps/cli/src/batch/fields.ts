import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { shorten } from '../shorten.ts'

/** The fields that a batch line may have, and what each holds. */
export type FieldTypes = Readonly<Record<string, 'text' | 'number'>>

export type FieldsOf<Types extends FieldTypes> = {
  readonly [Name in keyof Types]?: Types[Name] extends 'text' ? string : number
}

/**
 * Reads the fields of a batch line. Every field is checked for its type, and a field that is not known is a problem,
 * because a misspelt one that is passed over gives a wrong answer in silence.
 */
export function readFields<Types extends FieldTypes>(
  input: unknown,
  types: Types,
): Result<FieldsOf<Types>, readonly Problem[]> {
  const names = Object.keys(types)
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return fail([
      { kind: 'unreadable', field: 'line', value: quoted(input), accepted: `an object with ${list(names)}` },
    ])
  }
  const problems = Object.entries(input).flatMap(([name, value]): Problem[] => {
    const type = Object.hasOwn(types, name) ? types[name] : undefined
    if (type === undefined) {
      return [
        { kind: 'unknown', field: inWords(name), value: quoted(value), accepted: `one of the fields ${list(names)}` },
      ]
    }
    if (typeof value === (type === 'text' ? 'string' : 'number')) return []
    const accepted = type === 'text' ? 'a text in quotes' : 'a number, without quotes'
    return [{ kind: 'unreadable', field: name, value: quoted(value), accepted }]
  })
  return problems.length > 0 ? fail(problems) : ok(input as FieldsOf<Types>)
}

const list = (names: readonly string[]) => names.join(', ')

/** A value in a few words. A list or an object is not written out: it may be of any depth and size. */
function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'an object'
  return shorten(String(value))
}

/** A key as it can be named: one that is no plain word stands in quotes. */
const inWords = (key: string) => (/^\w{1,60}$/.test(key) ? key : JSON.stringify(shorten(key)))
