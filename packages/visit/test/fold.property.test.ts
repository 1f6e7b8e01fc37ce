import fc from 'fast-check'
import { expect, test } from 'vitest'
import { checkVisitFile, fold, readVisitFile, type Visit, type VisitEvent } from '../src/index.ts'
import { anyEvents, anyFact } from './any-event.ts'

const at = '2026-02-03T10:00:00Z'
const seed = { seed: 20_260_203 }
const visitOf = (events: readonly VisitEvent[]): Visit => fold({ id: 'v', events })
const fileOf = (events: readonly VisitEvent[]) => ({ format: 'chargewright-visit', version: 1, id: 'v', events })

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(frozen)
  return Object.freeze(value)
}

test('[property] any valid events fold, leave what they came from as it was, and give the same visit again', () => {
  fc.assert(
    fc.property(anyEvents, (events) => {
      const visit = visitOf(frozen(events))
      expect(visitOf(structuredClone(events) as VisitEvent[])).toEqual(visit)
      for (const { problem } of [...visit.problems, ...visit.doubts]) expect(problem.field).not.toBe('')
      for (const { quantity } of visit.history) expect(Number.isFinite(quantity.si + quantity.u!)).toBe(true)
    }),
    { ...seed, numRuns: 2000 },
  )
})

test('[property] the log keeps every fact as it was entered, in order, and every correction that has a target', () => {
  fc.assert(
    fc.property(anyEvents, (events) => {
      const { log, problems } = visitOf(events)
      const facts = events.filter(({ kind }) => kind !== 'correction')
      expect(
        log.map(({ id, at, by, entered }) => ({ id, at, ...(by === undefined ? {} : { by }), ...entered })),
      ).toEqual(facts)
      const aimless = new Set(problems.filter((p) => p.problem.field.endsWith('.corrects')).map((p) => p.eventId))
      for (const { corrections } of log) for (const { id } of corrections) expect(aimless.has(id)).toBe(false)
    }),
    { ...seed, numRuns: 1000 },
  )
})

test('[property] a correction that is withdrawn again leaves the visit as it was, but for the account of it in the log', () => {
  fc.assert(
    fc.property(anyEvents, fc.option(anyFact, { nil: undefined }), fc.nat(), (events, replacement, pick) => {
      fc.pre(events.length > 0)
      const corrects = events[pick % events.length]!.id
      const undone: readonly VisitEvent[] = [
        ...events,
        { id: 'c', at, kind: 'correction', corrects, ...(replacement ? { replacement } : {}) },
        { id: 'u', at, kind: 'correction', corrects: 'c' },
      ]
      expect(withoutAccount(visitOf(undone))).toEqual(withoutAccount(visitOf(events)))
    }),
    { ...seed, numRuns: 1000 },
  )
})

const withoutAccount = ({ log, ...visit }: Visit) => ({
  ...visit,
  log: log.map((entry) => ({ ...entry, corrections: [] })),
})

test('[property] the clock of the device changes nothing but the times shown', () => {
  fc.assert(
    fc.property(anyEvents, (events) => {
      const stopped = events.map((event) => ({ ...event, at }))
      const unclocked = (visit: Visit) => JSON.parse(JSON.stringify(visit, (key, value) => (key === 'at' ? at : value)))
      expect(unclocked(visitOf(events))).toEqual(unclocked(visitOf(stopped)))
    }),
    { ...seed, numRuns: 500 },
  )
})

test('[property] a file of any valid events is accepted and comes back from its text as it was', () => {
  fc.assert(
    fc.property(anyEvents, (events) => {
      const text = JSON.stringify(fileOf(events))
      const read = readVisitFile(text)
      expect(read).toEqual({ ok: true, value: JSON.parse(text) })
    }),
    { ...seed, numRuns: 500 },
  )
})

test('[property] whatever the data, the check answers with the file or with problems that name field, value and accepted', () => {
  const keys = fc.constantFrom(
    'format',
    'version',
    'id',
    'events',
    'kind',
    'at',
    'facts',
    'what',
    '__proto__',
    'constructor',
  )
  const anything = fc.anything({
    key: fc.oneof(keys, fc.string()),
    withBigInt: true,
    withNullPrototype: true,
    maxDepth: 6,
  })
  fc.assert(
    fc.property(anyEvents, anything, anything, fc.nat(), keys, (events, strange, stranger, pick, key) => {
      const damaged: unknown[] = structuredClone(events) as VisitEvent[]
      damaged.splice(pick % (events.length + 1), 1, strange)
      for (const data of [strange, fileOf(damaged as VisitEvent[]), { ...fileOf(events), [key]: stranger }]) {
        const checked = checkVisitFile(data)
        if (checked.ok) continue
        expect(checked.error.length).toBeGreaterThan(0)
        for (const problem of checked.error) {
          expect(problem.field).not.toBe('')
          if (problem.kind !== 'out-of-range') expect(problem.accepted).not.toMatch(/^$|[|"!<>]|undefined/)
        }
      }
    }),
    { ...seed, numRuns: 3000 },
  )
})

test('[property] whatever the text, reading it as a file never throws', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
      const read = readVisitFile(text)
      expect(read.ok).toBe(false)
    }),
    { ...seed, numRuns: 2000 },
  )
})
