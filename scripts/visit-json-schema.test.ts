import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { visitJsonSchema } from './visit-json-schema.ts'

const committed = readFileSync(new URL('../schemas/visit.schema.json', import.meta.url), 'utf8')

test('[pinned] the published schema is the one the code generates (else run: npx tsx scripts/write-schema.ts)', () => {
  expect(JSON.parse(committed)).toEqual(visitJsonSchema())
})

test('[property] every kind of event and no other is in the schema, each closed to unknown fields', () => {
  const { event } = JSON.parse(committed).$defs
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
