import { readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type EvacuationFlags, evacuation } from './evacuation.ts'
import { evacuationJson } from './evacuation-json.ts'
import { evacuationText } from './evacuation-text.ts'

const log = (name: string) => readFileSync(`examples/service/${name}.csv`, 'utf8')

describe('evacuation', () => {
  function found(text: string, flags: Partial<EvacuationFlags> = {}) {
    const finding = evacuation(text, { criterion: 'specification', ...flags })
    if (!finding.ok) throw new Error(JSON.stringify(finding.error))
    return finding.value
  }

  test.each([
    ['vacuum-levels', {}, 'not-held', 'moisture'],
    ['vacuum-rises', {}, 'pass', 'leak'],
    ['vacuum-rises', { limit: '400 micron' }, 'not-held', 'leak'],
    ['vacuum-rises', { coldest: '-30 °C' }, 'too-cold', 'leak'],
    ['vacuum-rises', { start: '20 Pa' }, 'not-deep-enough', 'leak'],
    ['vacuum-rises', { hold: '2 h' }, 'keep-watching', 'leak'],
  ])('[property] %s with %j is %s, by %s', (name, flags, kind, cause) => {
    expect(found(log(name), flags)).toMatchObject({ kind, cause })
  })

  test('[property] speaks in micron or in Pa, as the gauge does, and gives the fit in SI', () => {
    const finding = found(log('vacuum-rises'))
    expect(evacuationText(finding, INCH_POUND, 80)).toContain('at most 481 micron in 60 min')
    expect(evacuationText(finding, METRIC, 80)).toContain('at most 64 Pa a in 60 min')
    expect(evacuationJson(finding, METRIC)).toMatchObject({
      fit: { model: 'leak', leak_Pa_s: expect.closeTo(0.0083, 3) },
    })
  })

  test('[property] bare numbers without a heading take the unit of the flag', () => {
    const bare = '0,39\n600,45\n3600,60\n'
    expect(found(bare, { unit: 'Pa' })).toMatchObject({ kind: 'pass' })
    expect(found(bare, { unit: 'micron' })).toMatchObject({ kind: 'pass' })
    expect(evacuation(bare, { criterion: 'habit' })).toMatchObject({ error: [{ field: 'line 1, pressure' }] })
    expect(evacuation(bare, { criterion: 'habit', unit: 'psig' })).toMatchObject({ error: [{ field: 'unit' }] })
  })

  test('[limit] the log and every flag that cannot be read are told at once', () => {
    const refused = evacuation('time,micron\n0,x\n', { criterion: 'habit', start: '5', hold: 'long', coldest: '1' })
    const fields = refused.ok ? [] : refused.error.map(({ field }) => field)
    expect(fields).toEqual(['line 2, pressure', 'start', 'hold', 'coldest'])
  })
})
