import { readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type ChartAnswer, type ChartFlags, chart } from './chart.ts'
import { chartJson } from './chart-json.ts'
import { chartText } from './chart-text.ts'
import { twin } from './twin.ts'

const FACTS = JSON.parse(readFileSync('examples/service/system.json', 'utf8'))
const VALVE = { ...FACTS, meteringDevice: 'thermostatic' }

function found(data: unknown, flags: Partial<ChartFlags> = {}, unit: '°F' | '°C' = '°F'): ChartAnswer {
  const answer = chart(data, { family: 'wet-bulb', ...flags }, unit)
  if (!answer.ok) throw new Error(JSON.stringify(answer.error))
  return answer.value
}

const refused = (data: unknown, flags: Partial<ChartFlags> = {}) => {
  const answer = chart(data, { family: 'wet-bulb', ...flags }, '°F')
  return answer.ok ? [] : answer.error.map(({ field }) => field)
}

describe('chart', () => {
  test('[property] a target is the superheat that the twin has in that weather', () => {
    const state = twin(FACTS, { outdoor: '95 degF', return: '80 degF', wetBulb: '66 degF' })
    if (!state.ok || state.value.solution.kind !== 'steady') throw new Error('no state')
    const { cells } = found(FACTS).chart
    // Rows rise from 65 °F by 5 °F, columns from 56 °F by 2 °F.
    const cell = cells[6]![5]!
    expect(cell.kind === 'target' && cell.value_K).toBeCloseTo(state.value.solution.readings.superheat_K, 1)
  })

  test('[property] a fixed device is charted by superheat and a valve by subcooling, unless told otherwise', () => {
    expect(found(FACTS).chart.measure).toBe('superheat_K')
    expect(found(VALVE).chart.measure).toBe('subcooling_K')
    expect(found(FACTS, { measure: 'subcooling' }).chart.measure).toBe('subcooling_K')
  })

  test('[property] the page says that it is an estimate, and why a cell is empty', () => {
    const page = chartText(found(FACTS), INCH_POUND, 80)
    expect(page).toContain('estimated by model')
    expect(page).toContain('°F')
    expect(page).toContain('L  liquid would reach the compressor')
    expect(page).toMatch(/^ 95 .*\d+\.\d$/m)
    expect(chartText(found(VALVE, {}, '°C'), METRIC, 80)).toContain('Met within ± 1.7 K')
  })

  test('[property] as JSON it has a row per outdoor temperature, and a humidity where one is meant', () => {
    const answer = found(FACTS, { family: 'dry-bulb', humidity: '40 %' })
    const { cells, outdoor_K, indoor_K } = answer.chart
    expect(chartJson(answer)).toMatchObject({
      source: 'estimated by model',
      humidity_fraction: 0.4,
      outdoor_K,
      indoor_K,
    })
    expect([cells.length, cells[0]?.length]).toEqual([outdoor_K.length, indoor_K.length])
  })

  test('[limit] cold rooms, a humidity beside a wet bulb and one that is none are refused', () => {
    expect(refused({ ...FACTS, application: 'medium-temperature' })).toEqual(['Application'])
    expect(refused(FACTS, { humidity: '50 %' })).toEqual(['humidity'])
    expect(refused(FACTS, { family: 'dry-bulb', humidity: '150 %' })).toEqual(['humidity'])
    expect(refused({})).toContain('Nameplate charge')
  })
})
