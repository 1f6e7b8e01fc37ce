import { readVisitFile } from '@chargewright/visit'
import { expect, test } from 'vitest'
import type { StoredVisit } from '../store/visit-store.ts'
import { visitFileOf } from './visit-file-of.ts'

const stored: StoredVisit = {
  id: 'v',
  system: 's',
  origin: 'imported',
  about: 'Invented',
  setAside: false,
  events: [{ id: 'e', at: '2026-01-31T14:05:00Z', kind: 'note', text: 'seen' }],
}

test('[property] the file of a visit holds the record and nothing of this device', () => {
  const { id, about, events } = stored
  const file = { format: 'chargewright-visit', version: 1, id, about, events }
  expect(readVisitFile(String(visitFileOf(stored, 'Any').content))).toEqual({ ok: true, value: file })
})
