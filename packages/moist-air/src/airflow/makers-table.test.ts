import { quantity } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type AirStream, airStream } from './air-stream.ts'
import { STANDARD_DENSITY } from './airflow.ts'
import { airflowByFanTable, type FanEntry } from './by-fan-table.ts'
import { airflowByPressureDrop, type DropEntry } from './by-pressure-drop.ts'
import { MAKERS_TABLE } from './makers-table.ts'

const flow = (v: number) => quantity('airflow', v)
const pa = (v: number, u?: number) => quantity('pressure difference', v, u)

function airOf(share: number, uDensity = 0): AirStream {
  const stream = airStream(quantity('temperature', 294.26), quantity('absolute pressure', 101_325), {
    relativeHumidity: 0,
  })
  if (!stream.ok) throw new Error(stream.error.field)
  return { air: { ...stream.value.air, density_kg_m3: share * STANDARD_DENSITY }, uDensity }
}

/** A resistance of a given exponent, in standard air; invented. */
const resistance = (exponent: number): readonly DropEntry[] =>
  [0.3, 0.5, 0.8].map((v) => ({ airflow: flow(v), drop: pa(100 * (v / 0.5) ** exponent) }))

/** A blower; invented. */
const FAN: readonly FanEntry[] = [
  { externalStatic: pa(50), airflow: flow(0.6) },
  { externalStatic: pa(100), airflow: flow(0.55) },
  { externalStatic: pa(150), airflow: flow(0.48) },
  { externalStatic: pa(200), airflow: flow(0.38) },
]

const byDrop = (table: readonly DropEntry[], drop: number, air = airOf(1), u?: number) => {
  const found = airflowByPressureDrop(table, pa(drop, u), air)
  if (!found.ok) throw new Error(found.error.field)
  return found.value
}
const byFan = (pressure: number, air = airOf(1), u?: number) => {
  const found = airflowByFanTable(FAN, pa(pressure, u), air)
  if (!found.ok) throw new Error(found.error.field)
  return found.value
}

describe('pressure drop', () => {
  test('[property] in standard air the table gives its own entries back', () => {
    for (const { airflow, drop } of resistance(1.8))
      expect(byDrop(resistance(1.8), drop.si).airflow.si).toBeCloseTo(airflow.si, 4)
  })

  test('[property] between two entries it is the power law', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.31, max: 0.79, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (v, n) => {
          expect(byDrop(resistance(n), 100 * (v / 0.5) ** n).airflow.si).toBeCloseTo(v, 4)
        },
      ),
      { seed: 11, numRuns: 200 },
    )
  })

  test('[property] thin air drops less at the same volume: √ of the density for a coil, nothing for a laminar filter', () => {
    expect(byDrop(resistance(2), 100, airOf(0.81)).airflow.si / 0.5).toBeCloseTo(1 / 0.9, 3)
    expect(byDrop(resistance(1), 100, airOf(0.81)).airflow.si / 0.5).toBeCloseTo(1, 6)
  })

  test('[property] pressure, table and density carry their uncertainty', () => {
    const { airflow, standardAirflow } = byDrop(resistance(2), 100, airOf(1, 0.01), 4)
    expect(airflow.u! / airflow.si).toBeCloseTo(Math.hypot(0.02, MAKERS_TABLE, 0.005), 4)
    expect(standardAirflow.u! / standardAirflow.si).toBeCloseTo(Math.hypot(0.02, MAKERS_TABLE, 0.005), 4)
  })

  test.each([20, 300, Number.NaN, -5])('[limit] %f Pa is outside the table', (drop) => {
    expect(airflowByPressureDrop(resistance(2), pa(drop), airOf(1))).toMatchObject({
      ok: false,
      error: { kind: 'out-of-range' },
    })
  })

  test.each<[string, readonly DropEntry[]]>([
    ['empty', []],
    ['of one line', resistance(2).slice(0, 1)],
    ['that falls', resistance(2).toReversed()],
    ['of a fan', resistance(-1)],
    ['with a number missing', [...resistance(2), { airflow: flow(1), drop: pa(Number.NaN) }]],
    ['that starts at nothing', [{ airflow: flow(0), drop: pa(0) }, ...resistance(2)]],
  ])('[limit] a table %s is none', (_, table) => {
    expect(airflowByPressureDrop(table, pa(100), airOf(1))).toMatchObject({ ok: false, error: { kind: 'unreadable' } })
  })
})

describe('fan table', () => {
  test('[property] in standard air the table gives its own entries back, and the middle between them', () => {
    for (const { externalStatic, airflow } of FAN.slice(1, -1))
      expect(byFan(externalStatic.si).airflow.si).toBeCloseTo(airflow.si, 4)
    expect(byFan(125).airflow.si).toBeCloseTo(0.515, 4)
  })

  test('[property] in thin air the same volume makes less pressure', () => {
    expect(byFan(120, airOf(0.8)).airflow.si).toBeCloseTo(byFan(150).airflow.si, 4)
    expect(byFan(120, airOf(0.8)).standardAirflow.si).toBeCloseTo(0.8 * byFan(150).airflow.si, 4)
  })

  test('[property] the gauge carries its uncertainty along the slope of the table', () => {
    const { airflow } = byFan(125, airOf(1), 5)
    expect(airflow.u! / airflow.si).toBeCloseTo(Math.hypot((5 * 0.0014) / 0.515, MAKERS_TABLE), 4)
  })

  test.each([40, 210, Number.NaN])('[limit] %f Pa is outside the table', (pressure) => {
    expect(airflowByFanTable(FAN, pa(pressure), airOf(1))).toMatchObject({ ok: false, error: { kind: 'out-of-range' } })
  })

  test.each<[string, readonly FanEntry[]]>([
    ['empty', []],
    ['of one line', FAN.slice(0, 1)],
    ['that falls', FAN.toReversed()],
    ['without an airflow', [...FAN, { externalStatic: pa(250), airflow: flow(0) }]],
    ['with a number missing', [...FAN, { externalStatic: pa(Number.NaN), airflow: flow(0.3) }]],
  ])('[limit] a table %s is none', (_, table) => {
    expect(airflowByFanTable(table, pa(100), airOf(1))).toMatchObject({ ok: false, error: { kind: 'unreadable' } })
  })
})
