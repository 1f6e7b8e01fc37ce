import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fileName } from './saved-file.ts'

test('[property] a file name is safe on any disk, whatever the system is called', () => {
  fc.assert(
    fc.property(fc.option(fc.string({ unit: 'grapheme' }), { nil: undefined }), (system) => {
      expect(fileName(system, 'visit.json')).toMatch(/^[\p{L}\p{N}-]+\.visit\.json$/u)
    }),
    { seed: 20261125 },
  )
  expect(fileName('Clinic roof, unit 2', 'record.pdf')).toBe('clinic-roof-unit-2.record.pdf')
})
