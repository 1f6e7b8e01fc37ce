import { pascal } from '@chargewright/quantity'
import { findRefrigerant, saturationAtPressure } from '@chargewright/refrigerant'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, example, exampleWith } from '../../../examples/example-visits.ts'
import { cyclePoints } from './cycle-points.ts'

function pointsOf({ visit, assessment }: ReturnType<typeof example>) {
  const refrigerant = findRefrigerant(visit.system.facts.refrigerant!)
  if (!refrigerant.ok) throw new Error(refrigerant.error.field)
  return { refrigerant: refrigerant.value, ...cyclePoints(visit, assessment, refrigerant.value) }
}

const PSI = 6894.757293168
const SEA_LEVEL = 101_325
// Standard atmosphere at 4200 ft, ASHRAE Fundamentals 2017, ch. 1, eq. 3, worked here anew.
const AT_4200_FT = 101_325 * (1 - 2.25577e-5 * 4200 * 0.3048) ** 5.2559

test('[property] a level is the gauge reading plus the atmosphere of the site', () => {
  expect(pointsOf(example('orifice-add')).low!.pressure).toBeCloseTo(110 * PSI + SEA_LEVEL, -1)
  const { low } = pointsOf(example('orifice-cold-outdoors'))
  const typed = Number.parseFloat(example('orifice-cold-outdoors').visit.readings['suction-pressure']!.typed)
  expect(low!.pressure).toBeCloseTo(typed * PSI + AT_4200_FT, -1)
})

describe('the points of every example', () => {
  test.each(EXAMPLES.map((each) => [each.name, each] as const))(
    '[property] %s: each on its side of the dome',
    (_, each) => {
      const { refrigerant, points } = pointsOf(each)
      for (const { station, state, region } of points) {
        const lines = saturationAtPressure(refrigerant, pascal(state.pressure))
        if (!lines.ok) throw new Error(lines.error.field)
        if (station === 5) expect(state.enthalpy).toBeLessThan(lines.value.bubble.enthalpy_J_kg)
        else expect(state.enthalpy).toBeGreaterThan(lines.value.dew.enthalpy_J_kg)
        const hs = region.map(({ enthalpy }) => enthalpy)
        const ps = region.map(({ pressure }) => pressure)
        expect(Math.min(...hs)).toBeLessThan(state.enthalpy)
        expect(Math.max(...hs)).toBeGreaterThan(state.enthalpy)
        expect(Math.min(...ps)).toBeLessThan(state.pressure)
        expect(Math.max(...ps)).toBeGreaterThan(state.pressure)
      }
    },
  )
})

test('[property] the discharge stands at the pressure of the liquid line, right of the suction', () => {
  const { points, high } = pointsOf(
    exampleWith('orifice-add', { kind: 'reading', what: 'discharge-temperature', value: '172 °F' }),
  )
  const [suction, discharge] = [2, 3].map((station) => points.find((point) => point.station === station)!)
  expect(discharge!.state.pressure).toBe(high!.pressure)
  expect(discharge!.state.enthalpy).toBeGreaterThan(suction!.state.enthalpy)
})

test('[limit] a suction line colder than dew, and a liquid line warmer than bubble, have no place', () => {
  const wet = { kind: 'reading', what: 'suction-temperature', value: '30 °F' } as const
  const flashing = { kind: 'reading', what: 'liquid-temperature', value: '120 °F' } as const
  expect(pointsOf(exampleWith('orifice-add', wet, flashing)).points).toEqual([])
})
