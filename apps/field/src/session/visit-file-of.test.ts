import { readVisitFile } from '@chargewright/visit'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { StoredVisit } from '../store/visit-store.ts'
import { visitFileOf } from './visit-file-of.ts'

const stored: StoredVisit = {
  id: 'v',
  origin: 'imported',
  about: 'Invented',
  setAside: false,
  events: [{ id: 'e', at: '2026-01-31T14:05:00Z', kind: 'note', text: 'seen' }],
}

describe('the file of a visit', () => {
  test('[property] holds the record and nothing of this device', () => {
    const { id, about, events } = stored
    const file = { format: 'chargewright-visit', version: 1, id, about, events }
    expect(readVisitFile(visitFileOf(stored, 'Any').json)).toEqual({ ok: true, value: file })
  })

  test('[property] its name is safe on any disk, whatever the system is called', () => {
    fc.assert(
      fc.property(fc.option(fc.string({ unit: 'grapheme' }), { nil: undefined }), (system) => {
        expect(visitFileOf(stored, system).name).toMatch(/^[\p{L}\p{N}-]+\.visit\.json$/u)
      }),
      { seed: 20261125 },
    )
    expect(visitFileOf(stored, 'Clinic roof, unit 2').name).toBe('clinic-roof-unit-2.visit.json')
  })
})
