import { readdirSync, readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type DoseAnswer, dose } from './dose.ts'
import { doseJson } from './dose-json.ts'
import { doseText } from './dose-text.ts'

const files = readdirSync('examples').filter((file) => file.endsWith('.json'))

function visit(file: string): DoseAnswer {
  const answer = dose(JSON.parse(readFileSync(`examples/${file}`, 'utf8')))
  if (!answer.ok) throw new Error(file)
  return answer.value
}

describe('dose', () => {
  test('[property] a step that a twin sized has its interval, and what was learnt', () => {
    const answer = visit('orifice-add.json')
    const { mass, interval } = answer.assessment.finding.dose!
    expect(interval!.low.si).toBeLessThan(interval!.high.si)
    expect(mass.si).toBeLessThanOrEqual(interval!.high.si)
    const page = doseText(answer, INCH_POUND, 80)
    expect(page).toMatch(/^add .*estimated by model/)
    expect(page).toContain('nine of ten')
    expect(page).toMatch(/conductance of the condenser +[+−]\d+ ± \d+ %/)
    expect(doseJson(answer, METRIC)).toMatchObject({
      dose: { interval_low_kg: interval!.low.si, interval_high_kg: interval!.high.si },
      learnt: { sets: 1, factors: expect.arrayContaining([expect.objectContaining({ name: 'outdoor_air' })]) },
    })
  })

  test('[property] a set after each weighed step teaches too', () => {
    expect(doseJson(visit('step-by-step.json'), METRIC)).toMatchObject({ kind: 'hold', learnt: { sets: 3 } })
  })

  test.each(files)('[property] %s gets its dose or the reason, in words and by key', (file) => {
    const answer = visit(file)
    const { finding, method } = answer.assessment
    const page = doseText(answer, METRIC, 80)
    const json = doseJson(answer, METRIC) as { dose?: { without_twin?: string }; nothing_learnt?: string }
    expect(page).not.toMatch(/NaN|undefined|\[object/)
    expect(page.startsWith('no dose')).toBe(finding.dose === undefined)
    if (finding.dose && !finding.dose.interval && method?.id !== 'weight') {
      expect(json.dose?.without_twin).toBeTruthy()
      expect(page).toContain('No twin sized this step: ')
    }
    if (!answer.learnt.ok) {
      expect(json.nothing_learnt).toBeTruthy()
      expect(page).toContain('Nothing: ')
    }
  })

  test('[property] a receiver, and facts that are missing, are told as the reason', () => {
    expect(doseJson(visit('receiver-bubbles-under-load.json'), METRIC)).toMatchObject({
      nothing_learnt: expect.stringContaining('receiver hides'),
      dose: { without_twin: expect.stringContaining('sight glass') },
    })
    const bare = JSON.parse(readFileSync('examples/orifice-add.json', 'utf8'))
    delete bare.events[0].facts.nominalCapacity
    const answer = dose(bare)
    expect(answer.ok && doseText(answer.value, METRIC, 200)).toContain('Nominal capacity: missing')
  })

  test('[property] a charge that is weighed in needs no model, and says so', () => {
    expect(doseText(visit('capillary-weigh-in.json'), INCH_POUND, 80)).toMatch(/^add 3\.25 oz +by weight\n/)
  })

  test('[limit] an empty visit has no dose and says what to enter', () => {
    const empty = dose({ format: 'chargewright-visit', version: 1, id: 'empty', events: [] })
    expect(empty.ok && doseJson(empty.value, METRIC)).toMatchObject({
      kind: 'cannot-tell',
      nothing_learnt: 'the refrigerant is not known',
    })
    expect(dose({}).ok).toBe(false)
  })
})
