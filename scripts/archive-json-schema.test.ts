import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { archiveJsonSchema } from './archive-json-schema.ts'

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../schemas/${name}.schema.json`, import.meta.url), 'utf8'))

test('[pinned] the published schema is the one the code generates (else run: npx tsx scripts/write-schema.ts)', () => {
  expect(read('archive')).toEqual(archiveJsonSchema())
})

test('[property] an event of an archive is an event of a visit', () => {
  expect(read('archive').$defs.event).toEqual(read('visit').$defs.event)
})
