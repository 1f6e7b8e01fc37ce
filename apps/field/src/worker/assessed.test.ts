import { assess } from '@chargewright/charging'
import { inEnglish } from '@chargewright/quantity'
import { fold, type VisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import hold from '../../../../examples/orifice-hold.json'
import { assessed, taughtBy } from './assessed.ts'
import { systemHistory } from './system-history.ts'

const { events } = hold as VisitFile
const visit = (id: string) => ({ id, events })

describe('a visit to a system that was visited before', () => {
  test('[property] is judged with what those before it taught, as the packages hand it on', () => {
    const first = assess(fold(visit('a')))
    const second = assess(fold(visit('b')), [], first.memory)
    const third = assessed({ ...visit('c'), earlier: [visit('a'), visit('b')] })
    expect(third.learntFrom).toBe(2)
    expect(third.assessment).toEqual(assess(fold(visit('c')), [], second.memory))
    expect(third.assessment.lookAlikes).not.toEqual(assessed(visit('c')).assessment.lookAlikes)
    expect(assessed(visit('c')).learntFrom).toBe(0)
  })

  test('[limit] one at which nothing could be weighed, or that cannot be read, teaches nothing and takes nothing', () => {
    const empty = { id: 'empty', events: [] }
    const broken = { id: 'broken', events: [null] as unknown as VisitFile['events'] }
    expect(taughtBy([empty, broken])).toBeUndefined()
    expect(taughtBy([visit('a'), empty, broken])).toEqual(taughtBy([visit('a')]))
  })

  test('[property] stands in the history as on its own page, and begins anew where the lessons were forgotten', () => {
    const told = (id: string, beginsAnew: boolean) => ({ ...visit(id), called: id, beginsAnew })
    const outcome = (anew: boolean) => systemHistory([told('a', true), told('b', anew)], {}, inEnglish).outcomes[1]
    const knowing = assessed({ ...visit('b'), earlier: [visit('a')] }).assessment
    expect(outcome(false)?.finding).toBe(knowing.finding.kind)
    expect(outcome(true)?.finding).toBe(assessed(visit('b')).assessment.finding.kind)
  })
})
