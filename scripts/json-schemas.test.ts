import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { JSON_SCHEMAS } from './json-schemas.ts'

const committed = (name: string) =>
  JSON.parse(readFileSync(new URL(`../schemas/${name}.schema.json`, import.meta.url), 'utf8'))

test.each(Object.entries(JSON_SCHEMAS))(
  '[pinned] the published schema of a %s is the one the code generates (else run: npx tsx scripts/write-schemas.ts)',
  (name, schema) => {
    expect(committed(name)).toEqual(schema)
  },
)

test('[property] an event of an archive is an event of a visit', () => {
  expect(committed('archive').$defs.event).toEqual(committed('visit').$defs.event)
})

test('[property] every kind of event and no other is in the schema, each closed to unknown fields', () => {
  const { event } = committed('visit').$defs
  const kinds = event.oneOf.map((option: { properties: { kind: { const: string } } }) => option.properties.kind.const)
  expect(kinds).toEqual([
    'system-described',
    'reading',
    'observation',
    'refrigerant-moved',
    'cylinder-weighed',
    'weighing-gear',
    'supply-measured',
    'adjustment',
    'wait',
    'vacuum-test',
    'vacuum-reading',
    'vacuum-log',
    'pressure-test',
    'pressure-test-reading',
    'lessons-forgotten',
    'visit-moved',
    'photo',
    'note',
    'correction',
  ])
  for (const option of event.oneOf) expect(option.additionalProperties).toBe(false)
})
