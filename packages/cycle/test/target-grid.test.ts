import { describe, expect, it } from 'vitest'
import { chargingChart, type System } from '../src/index.ts'
import { soundHealth } from '../src/what-if.ts'
import grid from './data/target-superheat.json' with { type: 'json' }
import { olderUnit, plate, sized } from './sample.ts'

const kelvin = (F: number) => (F + 459.67) / 1.8
const wetBulb_F = grid.wetBulb_F.filter((F) => F >= 56)
const outdoor_F = grid.rows.map((row) => row.outdoor_F)
const LEAST_TARGET_F = 5

/** Model minus published in °F, cell by cell, where the publication has a target of 5 °F or more; no target counts as 0 °F. */
function differences(system: System, of: (outdoor: number, wetBulb: number) => number) {
  const chart = chargingChart(
    system,
    soundHealth(system),
    'superheat_K',
    { kind: 'wet-bulb' },
    outdoor_F.map(kelvin),
    wetBulb_F.map(kelvin),
  )
  if (!chart.ok) throw new Error(JSON.stringify(chart.error))
  return chart.value.cells.flatMap((row, i) =>
    row.flatMap((cell, j) => {
      const published = of(outdoor_F[i]!, wetBulb_F[j]!)
      const model = cell.kind === 'target' ? cell.value_K * 1.8 : 0
      return published >= LEAST_TARGET_F ? [model - published] : []
    }),
  )
}

const rms = (x: readonly number[]) => Math.sqrt(x.reduce((sum, value) => sum + value * value, 0) / x.length)
const publishedGrid = (outdoor: number, wetBulb: number) =>
  grid.rows.find((row) => row.outdoor_F === outdoor)!.superheat_F[grid.wetBulb_F.indexOf(wetBulb)] ?? 0
const tradeRule = (outdoor: number, wetBulb: number) => (3 * wetBulb - 80 - outdoor) / 2

// Published: California 2008 Residential Appendices RA3.2, REMEMBERED, ±0.2 °F; the rule of thumb is common practice.
describe('the charging chart of a fixed-orifice unit at right charge, 65 °F to 115 °F, wet bulb 56 °F to 76 °F', () => {
  const older = sized(olderUnit())

  it('[published] an R-22 unit with a reciprocating compressor is within 2 °F rms of the regulation grid', () => {
    const apart = differences(older, publishedGrid)
    expect(apart.length).toBeGreaterThan(120)
    expect(rms(apart)).toBeLessThan(2)
  })

  it('[published] an R-410A unit with a scroll is within 4 °F rms: its flow falls less with the pressure ratio', () => {
    expect(rms(differences(sized(plate('fixed-orifice')), publishedGrid))).toBeLessThan(4)
  })

  it('[published] both are within 5 °F rms of the trade rule, which itself is 2 °F to 6 °F off the grid at its ends', () => {
    expect(rms(differences(older, tradeRule))).toBeLessThan(5)
    expect(rms(differences(sized(plate('fixed-orifice')), tradeRule))).toBeLessThan(5)
  })

  it.each([
    ['R-22', olderUnit()],
    ['R-410A', plate('fixed-orifice')],
  ] as const)(
    '[published] %s: the target falls as it gets hotter outdoors and rises with the wet bulb, everywhere',
    (_, nameplate) => {
      const system = sized(nameplate)
      const chart = chargingChart(
        system,
        soundHealth(system),
        'superheat_K',
        { kind: 'wet-bulb' },
        outdoor_F.map(kelvin),
        [60, 64, 67, 70, 73, 76].map(kelvin),
      )
      if (!chart.ok) throw new Error(JSON.stringify(chart.error))
      const at = (i: number, j: number) => chart.value.cells[i]![j]!
      for (let i = 0; i < outdoor_F.length; i++) {
        for (let j = 0; j < 6; j++) {
          const [here, hotter, moister] = [
            at(i, j),
            i + 1 < outdoor_F.length ? at(i + 1, j) : undefined,
            j + 1 < 6 ? at(i, j + 1) : undefined,
          ]
          if (here.kind !== 'target') continue
          if (hotter?.kind === 'target') expect(hotter.value_K).toBeLessThan(here.value_K)
          if (moister) expect(moister.kind === 'target' && moister.value_K > here.value_K).toBe(true)
        }
      }
    },
  )
})
