import { assess } from '@chargewright/charging'
import { INCH_POUND } from '@chargewright/quantity'
import { fold, type VisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { TASKS } from './tasks.ts'

const examples = import.meta.glob<VisitFile>('../../../../examples/*.json', { eager: true, import: 'default' })
const demos = Object.values(examples).map(({ id, events }) => ({ id, events }))

describe('the work behind the tasks', () => {
  test('[property] every demo visit gets the answer of the packages, and it crosses to the page unchanged', () => {
    expect(demos.length).toBeGreaterThan(20)
    for (const demo of demos) {
      const { assessment } = TASKS.assess(demo)
      expect(structuredClone(assessment), demo.id).toEqual(assess(fold(demo)))
    }
  })

  test('[property] an answer is kept for its very events only', () => {
    const [demo] = demos
    const shorter = { ...demo!, events: demo!.events.slice(0, 1) }
    expect(TASKS.assess(structuredClone(demo!))).toBe(TASKS.assess(demo!))
    expect(TASKS.assess(shorter).assessment).toEqual(assess(fold(shorter)))
  })

  test('[property] an entry that was foreseen is judged as any other', () => {
    const demo = demos.find(({ id }) => id === 'demo-orifice-add')!
    const entry = { kind: 'reading', what: 'condenser-entering-air', value: '88 °F' } as const
    TASKS.foresee(demo, entry)
    const entered = { ...demo, events: [...demo.events, { id: 'e', at: demo.events.at(-1)!.at, ...entry }] }
    expect(TASKS.assess(entered).assessment).toEqual(assess(fold(entered)))
    expect(TASKS.assess(demo).assessment).toEqual(assess(fold(demo)))
  })

  test('[property] pictures cross to the page unchanged, in both sizes', async () => {
    const demo = demos.find(({ id }) => id === 'demo-orifice-add')!
    for (const size of ['phone', 'desk'] as const) {
      const pictures = await TASKS.draw(demo, INCH_POUND, size, 'en')
      expect(pictures.length).toBeGreaterThan(1)
      expect(structuredClone(pictures)).toEqual(pictures)
    }
  })

  test('[property] a refrigerant goes by its designation, whatever name was typed', () => {
    const typed = (refrigerant: string) => ({
      id: 'v',
      events: [{ id: 'e', at: '2026-01-31T14:05:00Z', kind: 'system-described' as const, facts: { refrigerant } }],
    })
    expect(TASKS.assess(typed('propane')).refrigerant).toBe('R-290')
    expect(TASKS.assess(typed('lemonade')).refrigerant).toBeUndefined()
    expect(TASKS.refrigerants()).toContain('R-410A')
  })
})
