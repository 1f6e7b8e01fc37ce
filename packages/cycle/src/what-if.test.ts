import { describe, expect, it } from 'vitest'
import { plate, sized } from '../test/sample.ts'
import { type Readings, soundHealth, WHAT_IFS, type WhatIf, whatIf } from './index.ts'

const system = sized(plate('fixed-orifice'))
const at = system.rated.conditions

function along(variable: WhatIf, values: readonly number[]): readonly Readings[] {
  const points = whatIf(system, at, soundHealth(system), variable, values)
  if (!points.ok) throw new Error(JSON.stringify(points.error))
  return points.value.map(({ solution }) => {
    if (solution.kind !== 'steady') throw new Error(`${variable}: ${solution.kind}`)
    return solution.readings
  })
}

const rises = (x: readonly number[]) => x.every((value, i) => i === 0 || value > x[i - 1]!)

describe('what if', () => {
  it.each<[WhatIf, readonly number[], keyof Readings, 'rises' | 'falls']>([
    ['charge', [0.7, 0.85, 1, 1.2], 'subcooling_K', 'rises'],
    ['outdoor', [293, 303, 313, 320], 'condensing_K', 'rises'],
    ['outdoor', [293, 303, 313, 320], 'superheat_K', 'falls'],
    ['wetBulb', [288, 291, 294, 297], 'superheat_K', 'rises'],
    ['indoorAir', [0.5, 0.7, 1, 1.2], 'superheat_K', 'rises'],
    ['outdoorAir', [0.4, 0.7, 1, 1.3], 'condensing_K', 'falls'],
    ['restriction', [0, 2e5, 4e5, 8e5], 'superheat_K', 'rises'],
    ['nonCondensable', [0, 1e5, 2e5], 'subcooling_K', 'rises'],
    ['wear', [0, 0.1, 0.2, 0.3], 'evaporating_K', 'rises'],
    ['drier', [0, 2e-4, 5e-4, 8e-4], 'superheat_K', 'rises'],
  ])('[property] %s over %j: %s %s', (variable, values, reading, direction) => {
    const series = along(variable, values).map((readings) => readings[reading])
    expect(rises(direction === 'rises' ? series : series.toReversed())).toBe(true)
  })

  it.each(Object.keys(WHAT_IFS) as WhatIf[])(
    '[limit] %s outside its range is refused, and so is what is no number',
    (variable) => {
      for (const value of [WHAT_IFS[variable].min - 1, WHAT_IFS[variable].max + 1, Number.NaN]) {
        expect(whatIf(system, at, soundHealth(system), variable, [value]).ok).toBe(false)
      }
    },
  )
})
