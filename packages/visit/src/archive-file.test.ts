import { describe, expect, test } from 'vitest'
import { type ArchiveFile, readArchiveFile } from './archive-file.ts'

const ARCHIVE: ArchiveFile = {
  format: 'chargewright-archive',
  version: 1,
  systems: [
    {
      id: 's',
      origin: 'started-here',
      setAside: false,
      events: [{ id: 's1', at: '2026-01-31T14:05:00Z', kind: 'system-described', facts: { name: 'Clinic' } }],
    },
  ],
  visits: [{ id: 'v', system: 's', origin: 'imported', about: 'invented', setAside: true, events: [] }],
  photos: [{ file: 'p.jpg', type: 'image/jpeg', base64: '/9j/' }],
  preferences: { 'chargewright.units': 'metric' },
}

describe('an archive file', () => {
  test('[property] what was written is read back', () => {
    expect(readArchiveFile(JSON.stringify(ARCHIVE))).toEqual({ ok: true, value: ARCHIVE })
  })

  test.each([
    ['a file cut off', JSON.stringify(ARCHIVE).slice(0, -40), 'archive file'],
    ['a later version', JSON.stringify({ ...ARCHIVE, version: 2 }), 'version'],
    ['an unknown field', JSON.stringify({ ...ARCHIVE, cylinders: [] }), 'cylinders'],
    [
      'a spoilt event',
      JSON.stringify(ARCHIVE).replace('system-described', 'system-descrbed'),
      'systems[0].events[0].kind',
    ],
    ['a spoilt time', JSON.stringify(ARCHIVE).replace('14:05', '14-05'), 'systems[0].events[0].at'],
    ['a visit at no system', JSON.stringify(ARCHIVE).replace('"system":"s"', '"system":"t"'), 'visits[0].system'],
    ['a photo that is none', JSON.stringify(ARCHIVE).replace('image/jpeg', 'text/html'), 'photos[0].type'],
  ])('[limit] %s is refused with its place', (_, json, field) => {
    expect(readArchiveFile(json)).toMatchObject({ ok: false, error: [{ field }] })
  })
})
