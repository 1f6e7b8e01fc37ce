import { fold, lastChange, type VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { isBefore } from './before-change.ts'

const at = '2026-11-25T14:00:00Z'
const read: VisitEvent = { id: 'read', at, kind: 'reading', what: 'suction-pressure', value: '110 psig' }
const moved: VisitEvent = {
  id: 'moved',
  at,
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass: '5 oz',
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
}
const adjusted: VisitEvent = { id: 'adjusted', at, kind: 'adjustment', what: 'filter cleaned' }
const visit = (...events: VisitEvent[]) => fold({ id: 'v', events })
const isOutdated = (...events: VisitEvent[]) => {
  const { moves, adjustments, readings } = visit(...events)
  return isBefore(lastChange({ moves, adjustments }), readings['suction-pressure'])
}

test('[property] a reading is outdated by a weighed step or an adjustment after it, and by nothing before it', () => {
  expect(isOutdated(read)).toBe(false)
  expect(isOutdated(moved, read)).toBe(false)
  expect(isOutdated(read, moved)).toBe(true)
  expect(isOutdated(read, adjusted)).toBe(true)
})

test('[property] the later of a step and an adjustment is the last change, in either order', () => {
  expect(lastChange(visit(moved, adjusted))?.eventId).toBe('adjusted')
  expect(lastChange(visit(adjusted, moved))?.eventId).toBe('moved')
})

test('[limit] a step that was withdrawn changed nothing', () => {
  expect(lastChange(visit(moved, { id: 'c', at, kind: 'correction', corrects: 'moved' }))).toBe(undefined)
})
