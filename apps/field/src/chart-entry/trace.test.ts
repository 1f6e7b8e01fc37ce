import { describe, expect, test } from 'vitest'
import { type ChartKind, nextTap, type Tap, traced } from './trace.ts'

const KIND: ChartKind = { indoor: 'wet-bulb', unit: '°F', across: 'outdoor' }

/** A picture with 10 pixels a degree: 55 across at x = 0, 0 up at y = 400. */
const at = (across: number, up: number) => ({ x: 10 * (across - 55), y: 400 - 10 * up })
const AXES: readonly Tap[] = [
  { on: 'across', value: 60, at: at(60, 0) },
  { on: 'across', value: 110, at: at(110, 0) },
  { on: 'up', value: 0, at: at(55, 0) },
  { on: 'up', value: 40, at: at(55, 40) },
]
const curve = (value: number, ...points: readonly (readonly [number, number])[]): readonly Tap[] =>
  points.map(([across, up]) => ({ on: 'curve', value, at: at(across, up) }))

test('[property] first both axes are marked, then the curves', () => {
  expect([0, 1, 2, 3, 4].map((n) => nextTap(AXES.slice(0, n)))).toEqual(['across', 'across', 'up', 'up', 'curve'])
})

describe('the grid', () => {
  test('[property] curves in any order, tapped in any order, come out as rows of rising temperatures', () => {
    const taps = [...AXES, ...curve(67, [105, 5], [65, 25]), ...curve(60, [65, 15], [85, 5])]
    const found = traced(taps, KIND)
    if (!found.ok) throw new Error(JSON.stringify(found.error))
    expect(found.value.chart).toEqual({
      form: 'grid',
      indoor: 'wet-bulb',
      unit: '°F',
      outdoorTemperatures: [65, 70, 75, 80, 85, 90, 95, 100, 105],
      indoorTemperatures: [60, 67],
      superheat: [
        [15, 25],
        [12.5, 22.5],
        [10, 20],
        [7.5, 17.5],
        [5, 15],
        [null, 12.5],
        [null, 10],
        [null, 7.5],
        [null, 5],
      ],
    })
    expect(found.value.apart).toBeCloseTo(0, 9)
  })

  test('[property] with the indoor temperature along the bottom the same chart lies on its side', () => {
    const wide = [...AXES, ...curve(95, [60, 10], [70, 25]), ...curve(85, [60, 18], [70, 33])]
    const found = traced(wide, { ...KIND, across: 'indoor' })
    if (!found.ok) throw new Error(JSON.stringify(found.error))
    const { outdoorTemperatures, indoorTemperatures, superheat } = found.value.chart
    expect([outdoorTemperatures, indoorTemperatures]).toEqual([
      [85, 95],
      [60, 65, 70],
    ])
    expect(superheat).toEqual([
      [18, 25.5, 33],
      [10, 17.5, 25],
    ])
  })

  test('[property] a corner between two rows is told as the distance that the grid misses it by', () => {
    const found = traced([...AXES, ...curve(67, [60, 30], [72.5, 20], [85, 30])], KIND)
    expect(found.ok && found.value.apart).toBeCloseTo(2, 1)
  })

  test('[property] the ends of a curve between round temperatures are kept', () => {
    const found = traced([...AXES, ...curve(67, [57.5, 30], [97.5, 10])], KIND)
    if (!found.ok) throw new Error(JSON.stringify(found.error))
    const { outdoorTemperatures, superheat } = found.value.chart
    expect([outdoorTemperatures[0], superheat[0]]).toEqual([57.5, [30]])
    expect([outdoorTemperatures.at(-1), superheat.at(-1)]).toEqual([97.5, [10]])
  })
})

describe('what is missing is said', () => {
  test.each([
    ['axes of the chart', AXES.slice(0, 3)],
    ['axes of the chart', [...AXES.slice(0, 3), AXES[2]!]],
    ['curves of the chart', AXES],
    ['curve of 67 °F', [...AXES, ...curve(67, [65, 25])]],
  ] as const)('[limit] %s', (field, taps) => {
    expect(traced(taps, KIND)).toMatchObject({ ok: false, error: { kind: 'missing', field } })
  })
})
