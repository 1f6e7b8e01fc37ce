import { STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { expect, test } from 'vitest'
import { PLAIN } from '../typed-reading.ts'
import { dewTemperature } from './dew-temperature.ts'

const found = findRefrigerant('R-407C')
if (!found.ok) throw new Error('not listed')
const PORT = { gauge: PLAIN.suctionGauge, atmosphere: STANDARD_ATMOSPHERE, refrigerant: found.value }

function dew(text: string) {
  const answer = dewTemperature(text, 'suction', PORT)
  if (!answer.ok) throw new Error(answer.error.kind)
  return answer.value
}

test('[property] a typed temperature is exact, one of a pressure is as uncertain as the gauge', () => {
  expect(dew('45 degF')).not.toHaveProperty('u')
  expect(dew('45 ± 1 degF').u).toBeCloseTo(0.5 / 1.8, 9)
  expect(dew('70 psig').u).toBeGreaterThan(0.3)
  expect(dew('70 ± 1 psig').u).toBeLessThan(dew('70 psig').u!)
})

test('[property] rises with the pressure, gauge and absolute alike', () => {
  expect(dew('80 psig').si).toBeGreaterThan(dew('70 psig').si)
  expect(dew('84.696 psia').si).toBeCloseTo(dew('70 psig').si, 3)
})

test('[limit] a pressure needs its refrigerant, and one above the critical point is refused', () => {
  const { refrigerant, ...without } = PORT
  expect(dewTemperature('70 psig', 'suction', without)).toMatchObject({ error: { field: 'refrigerant' } })
  expect(dewTemperature('5000 psig', 'suction', PORT)).toMatchObject({ ok: false })
})
