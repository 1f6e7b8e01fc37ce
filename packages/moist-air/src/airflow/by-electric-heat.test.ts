import { quantity } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type AirStream, airStream } from './air-stream.ts'
import { STANDARD_DENSITY } from './airflow.ts'
import { airflowByElectricHeat, type ElectricHeat } from './by-electric-heat.ts'

const CFM = 0.3048 ** 3 / 60
const F = 1 / 1.8

function stream(pressure_Pa = 101_325): AirStream {
  const found = airStream(quantity('temperature', 294.26), quantity('absolute pressure', pressure_Pa), {
    relativeHumidity: 0,
  })
  if (!found.ok) throw new Error(found.error.field)
  return found.value
}

const HEAT: ElectricHeat = {
  phases: 1,
  voltage: quantity('voltage', 240),
  current: quantity('current', 40),
  rise: quantity('temperature difference', 25 * F),
}

function found(change: Partial<ElectricHeat> = {}, air = stream()) {
  const airflow = airflowByElectricHeat({ ...HEAT, ...change }, air)
  if (!airflow.ok) throw new Error(airflow.error.field)
  return airflow.value
}

describe('the classic formula', () => {
  // CFM = W · 3.412/(1.08 Δt °F) of standard air, REMEMBERED; 1.08 = 60 · 0.075 · 0.24 to three digits.
  test('[published] 9600 W and 25 °F: 1213 CFM, to the three digits of 1.08', () => {
    const classic = (9600 * 3.412) / (1.08 * 25)
    expect(Math.abs(found().standardAirflow.si / CFM / classic - 1)).toBeLessThan(0.005)
  })

  // COMPUTED: 1.08 times the density ratio of the altitude, with its pressure in psia.
  test.each([
    [-1000, 15.235, 1.1196],
    [0, 14.696, 1.08],
    [1000, 14.173, 1.0415],
    [2000, 13.664, 1.0042],
    [3000, 13.171, 0.9679],
    [4000, 12.692, 0.9328],
    [5000, 12.228, 0.8986],
    [6000, 11.777, 0.8655],
    [7000, 11.34, 0.8334],
    [8000, 10.916, 0.8022],
    [10000, 10.107, 0.7427],
  ])('[oracle] at %d ft (%f psia) the factor 1.08 is %f', (_, psia, factor) => {
    const high = stream(psia * 6894.757293168)
    expect((1.08 * found().airflow.si) / found({}, high).airflow.si).toBeCloseTo(factor, 3)
    expect(found({}, high).standardAirflow.si / found().standardAirflow.si).toBeCloseTo(1, 9)
  })
})

describe('balances', () => {
  test('[property] the heat is in the air: mass, specific heat and rise give back the watts', () => {
    const { airflow } = found()
    const { density_kg_m3 } = stream().air
    expect(airflow.si * density_kg_m3 * 1006 * 25 * F).toBeCloseTo(9600, -1)
  })

  test('[property] three phases carry √3 times as much', () => {
    expect(found({ phases: 3 }).airflow.si / found().airflow.si).toBeCloseTo(Math.sqrt(3), 9)
  })

  test('[property] the blower heats the air too', () => {
    expect(found({ blower_W: 480 }).airflow.si / found().airflow.si).toBeCloseTo(1.05, 9)
  })

  test('[property] volume and standard volume are the same mass', () => {
    const { airflow, standardAirflow } = found({}, stream(84_000))
    expect(airflow.si * stream(84_000).air.density_kg_m3).toBeCloseTo(standardAirflow.si * STANDARD_DENSITY, 9)
  })
})

test('[property] the uncertainties of volts, amps, rise and density add in quadrature', () => {
  const { airflow } = found(
    {
      voltage: quantity('voltage', 240, 2.4),
      current: quantity('current', 40, 0.8),
      rise: quantity('temperature difference', 25 * F, F),
    },
    { ...stream(), uDensity: 0.005 },
  )
  expect(airflow.u! / airflow.si).toBeCloseTo(Math.hypot(0.01, 0.02, 0.04, 0.005), 9)
})

describe('hostile readings', () => {
  test.each<[string, Partial<ElectricHeat>, string]>([
    ['no volts', { voltage: quantity('voltage', Number.NaN) }, 'heater voltage'],
    ['no amps', { current: quantity('current', 0) }, 'heater current'],
    ['a rise of nothing', { rise: quantity('temperature difference', 0) }, 'temperature rise'],
    ['a rise within its own uncertainty', { rise: quantity('temperature difference', 5, 2) }, 'temperature rise'],
    ['a fall', { rise: quantity('temperature difference', -10) }, 'temperature rise'],
    ['a negative blower', { blower_W: -1 }, 'blower power'],
    [
      'an uncertainty that is no number',
      { voltage: quantity('voltage', 240, Number.NaN) },
      'uncertainty of the airflow by electric heat',
    ],
  ])('[limit] %s', (_, change, field) => {
    expect(airflowByElectricHeat({ ...HEAT, ...change }, stream())).toMatchObject({ ok: false, error: { field } })
  })
})
