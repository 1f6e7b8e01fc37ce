import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { Memory } from './memory.ts'

/** A memory out of data that came from outside, a file for instance; else the field that is none. */
export function readMemory(data: unknown): Result<Memory, Problem> {
  const refused = (field: string, value: unknown, accepted: string): Result<Memory, Problem> =>
    fail({ kind: 'unreadable', field: `memory${field}`, value: shown(value), accepted })
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return refused('', data, 'an object')
  const { version, twin, visits, names, mean, covariance } = data as Readonly<Record<string, unknown>>
  if (version !== 1) return refused('.version', version, '1')
  if (typeof twin !== 'string') return refused('.twin', twin, 'the version of the twin, as text')
  if (!Number.isInteger(visits) || Number(visits) < 0) return refused('.visits', visits, 'a whole number, 0 or more')
  if (!Array.isArray(names) || !names.every((name) => typeof name === 'string')) {
    return refused('.names', names, 'a list of names')
  }
  if (!isRow(mean, names.length)) return refused('.mean', mean, `${names.length} numbers`)
  const isSquare =
    Array.isArray(covariance) &&
    covariance.length === names.length &&
    covariance.every((row, i) => isRow(row, names.length) && row[i]! > 0)
  if (!isSquare) {
    return refused(
      '.covariance',
      covariance,
      `${names.length} rows of ${names.length} numbers, above 0 on the diagonal`,
    )
  }
  return ok({ version: 1, twin, visits: Number(visits), names, mean, covariance })
}

const isRow = (row: unknown, length: number): row is readonly number[] =>
  Array.isArray(row) && row.length === length && row.every((x) => typeof x === 'number' && Number.isFinite(x))

const shown = (value: unknown) => (JSON.stringify(value) ?? 'nothing').slice(0, 60)
