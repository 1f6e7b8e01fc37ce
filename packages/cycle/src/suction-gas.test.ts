import { pascal } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { expect, test } from 'vitest'
import { suctionGas } from './suction-gas.ts'

const found = findRefrigerant('R-134a')
if (!found.ok) throw new Error('not listed')
const refrigerant = found.value
const SUCTION = pascal(300_000)

function gas(discharge_Pa: number, temperature_K: number) {
  const answer = suctionGas(refrigerant, SUCTION, pascal(discharge_Pa), temperature_K)
  if (!answer.ok) throw new Error(answer.error.kind)
  return answer.value
}

// Between the pressures Δh = ∫ v dp at constant entropy; over a step of 1 % the specific volume hardly changes.
test('[property] over a small rise of pressure the enthalpy rises by the specific volume times it', () => {
  const { isentropicRise_J_kg, specificVolume_m3_kg } = gas(303_000, 290)
  expect(isentropicRise_J_kg / (specificVolume_m3_kg * 3_000)).toBeCloseTo(1, 1)
})

test('[property] hotter gas is lighter and takes more work for the same pressures', () => {
  const [cool, hot] = [gas(1_000_000, 285), gas(1_000_000, 310)]
  expect(hot.specificVolume_m3_kg).toBeGreaterThan(cool.specificVolume_m3_kg)
  expect(hot.isentropicRise_J_kg).toBeGreaterThan(cool.isentropicRise_J_kg)
})

test('[limit] liquid is no suction gas, and a temperature beyond the equations is refused', () => {
  const at = (temperature_K: number) => suctionGas(refrigerant, SUCTION, pascal(1_000_000), temperature_K)
  expect(at(260)).toMatchObject({ ok: false, error: { field: 'return gas' } })
  expect(at(5000)).toMatchObject({ ok: false, error: { kind: 'out-of-range' } })
})
