import type { Problem } from '@chargewright/quantity'
import type * as v from 'valibot'

/** What the schema found wrong, as a problem in words: the path of the field, what stood there, what would be accepted. */
export function schemaProblem(issue: v.BaseIssue<unknown>): Problem {
  const field = pathOf(issue)
  const { input } = issue
  const accepted = acceptedBy(issue)
  if (input === undefined) {
    return { kind: 'missing', field, value: 'nothing', accepted: field.endsWith('.at') ? TIME : accepted }
  }
  return { kind: issue.expected === 'never' ? 'unknown' : 'unreadable', field, value: quoted(input), accepted }
}

/** A value in a few words. A list or an object is not written out: it may be of any depth and size. */
export function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'an object'
  const text = String(value)
  return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text
}

const LONGEST_QUOTE = 60

/** `events[3].facts.name`; a key that is no plain word is quoted in brackets. */
function pathOf({ path }: v.BaseIssue<unknown>): string {
  if (path === undefined) return 'visit file'
  const text = path.reduce((before, { key }) => {
    if (typeof key === 'number') return `${before}[${key}]`
    const name = quoted(key)
    return /^\w+$/.test(name) ? `${before}.${name}` : `${before}["${name}"]`
  }, '')
  return text.replace(/^\./, '')
}

function acceptedBy({ type, input, expected, requirement }: v.BaseIssue<unknown>): string {
  switch (type) {
    case 'max_length':
      return `at most ${requirement} ${Array.isArray(input) ? 'entries' : 'characters'}`
    case 'non_empty':
      return 'some text'
    case 'min_value':
      return `at least ${requirement}`
    case 'max_value':
      return `at most ${requirement}`
    case 'finite':
      return 'a finite number'
    case 'iso_timestamp':
      return TIME
    default:
      return inWords(expected ?? type, input)
  }
}

const TIME = 'a time with its zone, such as 2026-01-31T14:05:00Z'

const WORDS: Readonly<Record<string, string>> = {
  never: 'no such field here',
  string: 'text in quotes',
  number: 'a number',
  boolean: 'true or false',
  Array: 'a list',
  Object: 'an object',
}

/** The validator writes `("a" | "b")` for a choice, `"a"` for a literal or, where a field is missing, for its name. */
function inWords(expected: string, input: unknown): string {
  const choices = expected.replace(/^\(|\)$/g, '').split(' | ')
  if (choices.length > 1) return `one of ${choices.map(unquoted).join(', ')}`
  const isFieldName = input === undefined && expected.startsWith('"')
  return isFieldName ? 'a value' : (WORDS[expected] ?? unquoted(expected))
}

const unquoted = (text: string) => text.replace(/^"|"$/g, '')
