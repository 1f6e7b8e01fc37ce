import { describe, expect, it } from 'vitest'
import { plate, readings, sized, weather } from '../../test/sample.ts'
import { type ChargingChart, type ChartFamily, chargingChart, chartCsv, chartSvg, soundHealth } from '../index.ts'

const system = sized(plate('fixed-orifice'))
const K = (celsius: number) => celsius + 273.15
const outdoor = [20, 25, 30, 35, 40, 45].map(K)

function chartOf(
  family: ChartFamily,
  indoor: readonly number[],
  measure: 'superheat_K' | 'subcooling_K' = 'superheat_K',
) {
  const chart = chargingChart(system, soundHealth(system), measure, family, outdoor, indoor.map(K))
  if (!chart.ok) throw new Error(JSON.stringify(chart.error))
  return chart.value
}

const at = (chart: ChargingChart, i: number, j: number) => chart.cells[i]![j]!

describe('charging chart', () => {
  const wetBulb = chartOf({ kind: 'wet-bulb' }, [14, 17, 19.44, 22])

  it('[property] a cell is the state of the system in that weather, with the band of the method', () => {
    const cell = at(wetBulb, 3, 2)
    const model = readings(system, 1, {}, weather(35, 26.67, 19.44)).superheat_K
    expect(cell).toMatchObject({ kind: 'target' })
    if (cell.kind !== 'target') return
    expect(cell.value_K).toBeCloseTo(model, 1)
    expect([cell.value_K - cell.low_K, cell.high_K - cell.value_K]).toEqual([
      expect.closeTo(5 / 1.8, 9),
      expect.closeTo(5 / 1.8, 9),
    ])
  })

  it('[limit] where the target would be below 5 °F there is none, with the reason', () => {
    const cell = at(wetBulb, 5, 0)
    expect(cell.kind === 'none' && ['below-least-target', 'flooded'].includes(cell.because)).toBe(true)
  })

  it('[property] the dry-bulb family at 50 % humidity rises with the dry bulb', () => {
    const dryBulb = chartOf({ kind: 'dry-bulb', relativeHumidity: 0.5 }, [24, 27, 30])
    const [a, b, c] = [at(dryBulb, 0, 0), at(dryBulb, 0, 1), at(dryBulb, 0, 2)]
    if (a.kind !== 'target' || b.kind !== 'target' || c.kind !== 'target') throw new Error('no target')
    expect(b.value_K).toBeGreaterThan(a.value_K)
    expect(c.value_K).toBeGreaterThan(b.value_K)
  })

  it('[property] the subcooling chart has targets all over, with its own band', () => {
    const cells = chartOf({ kind: 'wet-bulb' }, [17, 19.44], 'subcooling_K').cells.flat()
    const targets = cells.filter((cell) => cell.kind === 'target')
    expect(targets.length).toBeGreaterThan(6)
    for (const cell of targets) expect(cell.high_K - cell.low_K).toBeCloseTo(6 / 1.8, 9)
  })

  it('[property] follows the air of the site: at 1,600 m, thinner, the coils take up less and targets differ', () => {
    const here = (pressure: number) => {
      const chart = chargingChart(
        system,
        soundHealth(system),
        'superheat_K',
        { kind: 'wet-bulb' },
        [K(30)],
        [K(19.44)],
        pressure,
      )
      if (!chart.ok) throw new Error(JSON.stringify(chart.error))
      const cell = at(chart.value, 0, 0)
      return cell.kind === 'target' ? cell.value_K : Number.NaN
    }
    expect(Math.abs(here(83_500) - here(101_325))).toBeGreaterThan(0.3)
    const beyond = chargingChart(system, soundHealth(system), 'superheat_K', { kind: 'wet-bulb' }, [300], [290], 10)
    expect(beyond.ok).toBe(false)
  })

  it('[limit] an axis beyond any weather is refused', () => {
    expect(chargingChart(system, soundHealth(system), 'superheat_K', { kind: 'wet-bulb' }, [200], [290]).ok).toBe(false)
    expect(
      chargingChart(system, soundHealth(system), 'superheat_K', { kind: 'wet-bulb' }, [300], [Number.NaN]).ok,
    ).toBe(false)
  })

  it('[property] as CSV it reads back into the same targets, in °F with empty cells for none', () => {
    const [head, ...rows] = chartCsv(wetBulb, '°F')
      .trim()
      .split('\n')
      .map((line) => line.split(','))
    expect(head!.slice(1).map(Number)).toEqual([57.2, 62.6, 67, 71.6])
    expect(rows).toHaveLength(outdoor.length)
    for (const [i, row] of rows.entries()) {
      for (const [j, text] of row.slice(1).entries()) {
        const cell = at(wetBulb, i, j)
        expect(text).toBe(cell.kind === 'target' ? (cell.value_K * 1.8).toFixed(1) : '')
      }
    }
  })

  it('[property] as SVG it is labelled an estimate and draws a curve per column with two targets or more', () => {
    const svg = chartSvg(wetBulb, '°C')
    const columns = wetBulb.indoor_K.filter(
      (_, j) => wetBulb.cells.filter((row) => row[j]!.kind === 'target').length >= 2,
    )
    expect(svg).toContain('estimated by model')
    expect(svg.match(/<polyline/g)).toHaveLength(columns.length)
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
  })
})
