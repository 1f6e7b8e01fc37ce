import { fail, type Problem, type Result } from '@chargewright/quantity'
import { refrigerantNames } from '@chargewright/refrigerant'
import { shorten } from './shorten.ts'

/** Puts the nearest names into the problem of a refrigerant that is not known. */
export function withNearNames<Found>(found: Result<Found, Problem>): Result<Found, Problem> {
  if (found.ok || found.error.kind !== 'unknown') return found
  const { value } = found.error
  const near = nearNames(value, refrigerantNames())
  const accepted = `${near.length > 0 ? `perhaps ${near.join(', ')}; ` : ''}“chargewright list” shows all`
  return fail({ ...found.error, value: shorten(value), accepted })
}

const MOST_OFFERED = 4
/** Two slips of the finger. */
const FARTHEST = 2

/** The names that differ by at most two typed signs, the nearest first. */
export function nearNames(typed: string, names: readonly string[]): readonly string[] {
  const wanted = plain(typed)
  return names
    .map((name) => ({ name, distance: distance(wanted, plain(name)) }))
    .filter((candidate) => candidate.distance <= FARTHEST)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, MOST_OFFERED)
    .map((candidate) => candidate.name)
}

/** `R 410A`, `r-410a` and `410A` are typed for the same. */
const plain = (name: string) =>
  name
    .slice(0, 20)
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '')
    .replace(/^r/, '')

/** Letters to insert, drop or replace (Levenshtein 1966), row by row. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const replaced = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, replaced))
    }
    row = next
  }
  return row[b.length]!
}
