import { readdirSync, readFileSync } from 'node:fs'
import { type Assessment, assess } from '@chargewright/charging'
import { checkVisitFile, type Fact, fold, readVisitFile, type Visit } from '@chargewright/visit'

export interface Example {
  readonly name: string
  readonly visit: Visit
  readonly assessment: Assessment
}

const folder = new URL('./', import.meta.url)

/** Every example visit with its answer. */
export const EXAMPLES: readonly Example[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => {
    const read = readVisitFile(readFileSync(new URL(file, folder), 'utf8'))
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    return answered(file.replace('.json', ''), fold(read.value))
  })

export const example = (name: string): Example => EXAMPLES.find((each) => each.name === name)!

/** A visit of these facts, one a minute from an invented noon, with its answer. */
export function visitOf(...facts: readonly Fact[]): Example {
  const events = facts.map((fact, i) => ({
    id: `e${i}`,
    at: `2026-07-01T12:${String(i % 60).padStart(2, '0')}:00Z`,
    ...fact,
  }))
  const file = checkVisitFile({ format: 'chargewright-visit', version: 1, id: 'invented', events })
  if (!file.ok) throw new Error(JSON.stringify(file.error))
  return answered('invented', fold(file.value))
}

/** An example with more facts at its end. */
export function exampleWith(name: string, ...facts: readonly Fact[]): Example {
  const read = readVisitFile(readFileSync(new URL(`${name}.json`, folder), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const more = facts.map((fact, i) => ({ id: `more-${i}`, at: '2026-07-01T12:00:00Z', ...fact }))
  return answered(name, fold({ ...read.value, events: [...read.value.events, ...more] }))
}

function answered(name: string, visit: Visit): Example {
  return { name, visit, assessment: assess(visit) }
}
