import { assess } from '@chargewright/charging'
import { fold, type VisitFile } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { rehearsal } from './rehearsal.ts'

const examples = import.meta.glob<VisitFile>('../../../../examples/*.json', { eager: true, import: 'default' })
const example = (name: string) => examples[`../../../../examples/${name}.json`]!

const rehearsed = (visit: VisitFile) => rehearsal(visit, 2).map((piece) => piece())

test.each(['orifice-hold', 'valve-subcooling-add', 'glide-r407c'])(
  '[property] %s is rehearsed through to a step that the model sizes, and last as it stands',
  (name) => {
    const visit = example(name)
    const all = rehearsed(visit)
    expect(all.slice(0, -1).map(({ finding }) => finding.kind)).toEqual(['add', 'add'])
    expect(all[0]!.finding.dose?.interval).toBeDefined()
    expect(all.at(-1)).toEqual(assess(fold(visit)))
  },
)

test('[property] the facts alone are enough', () => {
  const { events, ...visit } = example('orifice-hold')
  const described = { ...visit, events: events.filter(({ kind }) => kind === 'system-described') }
  expect(rehearsed(described).map(({ finding }) => finding.kind)).toEqual(['add', 'add', 'cannot-tell'])
})

test('[limit] a system of which no model is made is not rehearsed', () => {
  const nothing = { ...example('orifice-hold'), events: [] }
  expect(rehearsal(nothing, 2)).toEqual([])
})
