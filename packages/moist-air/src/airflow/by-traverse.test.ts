import { INCH_POUND, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type AirStream, airStream } from './air-stream.ts'
import { STANDARD_DENSITY } from './airflow.ts'
import { airflowByTraverse, type TraverseReadings } from './by-traverse.ts'
import { type Duct, LOG_LINEAR, LOG_TCHEBYCHEFF, traversePoints } from './traverse-points.ts'

const INCH = 0.0254
const INH2O = 249.08891
const FPM = 0.3048 / 60
const inches = (v: number, u?: number) => quantity('length', v * INCH, u === undefined ? undefined : u * INCH)
const SQUARE: Duct = { kind: 'rectangular', width: inches(20), height: inches(20) }
const ROUND: Duct = { kind: 'round', diameter: inches(14) }

/** Dry air of exactly a given density. */
function airOf(density_kg_m3: number): AirStream {
  const stream = airStream(quantity('temperature', 294.26), quantity('absolute pressure', 101_325), {
    relativeHumidity: 0,
  })
  if (!stream.ok) throw new Error(stream.error.field)
  return { air: { ...stream.value.air, density_kg_m3 }, uDensity: 0 }
}

function found(duct: Duct, readings: TraverseReadings, air = airOf(STANDARD_DENSITY)) {
  const airflow = airflowByTraverse(duct, readings, air)
  if (!airflow.ok) throw new Error(`${airflow.error.field} ${airflow.error.value}`)
  return airflow.value
}

const same = <T>(count: number, value: T): readonly T[] => Array.from({ length: count }, () => value)
const pressures = (count: number, inH2O: number, u?: number): TraverseReadings => ({
  kind: 'velocity pressure',
  pressures: same(count, quantity('pressure difference', inH2O * INH2O, u)),
})

describe('velocity pressure', () => {
  // The printed constants take a column of water at 68 °F, 0.2 % lighter than the conventional one that units are
  // defined by (NIST SP 811), and so come out 0.1 % lower.
  const LIGHTER_WATER = 0.998
  const constant = (share: number) =>
    found(SQUARE, pressures(25, LIGHTER_WATER), airOf(share * STANDARD_DENSITY)).airflow.si / (20 * INCH) ** 2 / FPM

  // V = 4005 √(inches of water) ft/min at 0.075 lb/ft³, REMEMBERED, four digits.
  test('[published] 1 in of water in standard air is 4005 ft/min', () => {
    expect(Math.abs(constant(1) - 4005)).toBeLessThan(1)
  })

  // COMPUTED constants at altitude, from 1096.7/√ρ in lb/ft³.
  test.each([
    [1.0367, 3933.1],
    [1.0, 4004.6],
    [0.9644, 4077.8],
    [0.9298, 4153.0],
    [0.8962, 4230.0],
    [0.8637, 4309.1],
    [0.8321, 4390.2],
    [0.8014, 4473.4],
    [0.7716, 4558.8],
    [0.7428, 4646.5],
    [0.6877, 4829.0],
    [0.297, 7348.5],
  ])('[oracle] at %f of standard density the constant is %f', (share, expected) => {
    expect(Math.abs(constant(share) / expected - 1)).toBeLessThan(0.0003)
  })

  test('[property] the velocities are averaged, not the pressures', () => {
    const halves = [...same(12, 0.01), ...same(13, 0.09)].map((p) => quantity('pressure difference', p * INH2O))
    const { airflow } = found(SQUARE, { kind: 'velocity pressure', pressures: halves })
    const mean = (12 * 0.1 + 13 * 0.3) / 25
    expect(airflow.si / found(SQUARE, pressures(25, 1)).airflow.si).toBeCloseTo(mean, 9)
  })

  test('[property] a negative pressure counts as no velocity, at its point', () => {
    const one = [quantity('pressure difference', -5), ...same(24, quantity('pressure difference', 10))]
    const { airflow } = found(SQUARE, { kind: 'velocity pressure', pressures: one })
    expect(airflow.si / found(SQUARE, pressures(25, 10 / INH2O)).airflow.si).toBeCloseTo(24 / 25, 9)
  })
})

describe('the rules find the mean of a profile between walls', () => {
  // A profile of one seventh power in the distance from the wall has a mean of 7/8 of the middle along a line, and of
  // 49/60 in a round duct: textbook integrals. The rules are held to 1.5 % of them.
  const power = (fraction: number) => (2 * Math.min(fraction, 1 - fraction)) ** (1 / 7)
  test.each([5, 6, 7] as const)('[oracle] log-Tchebycheff, %d lines', (lines) => {
    const mean = LOG_TCHEBYCHEFF[lines].reduce((sum, f) => sum + power(f), 0) / lines
    expect(Math.abs(mean / (7 / 8) - 1)).toBeLessThan(0.015)
  })

  test.each([6, 10] as const)('[oracle] log-linear, %d points', (points) => {
    const mean = LOG_LINEAR[points].reduce((sum, f) => sum + power(f), 0) / points
    expect(Math.abs(mean / (49 / 60) - 1)).toBeLessThan(0.015)
  })

  test('[property] every rule is the same from both walls', () => {
    for (const fractions of [...Object.values(LOG_TCHEBYCHEFF), ...Object.values(LOG_LINEAR)]) {
      for (const [i, f] of fractions.entries()) expect(f + fractions.at(-1 - i)!).toBeCloseTo(1, 9)
    }
  })
})

describe('points', () => {
  test('[property] 20 by 34 in: five lines and six', () => {
    const points = traversePoints({ kind: 'rectangular', width: inches(20), height: inches(34) })
    if (!points.ok || points.value.kind !== 'rectangular') throw new Error('no points')
    expect(points.value.acrossWidth_m.map((x) => x / INCH)).toEqual(
      [1.48, 5.76, 10, 14.24, 18.52].map((x) => expect.closeTo(x, 6)),
    )
    expect(points.value.acrossHeight_m).toHaveLength(6)
  })

  test('[property] a round duct has ten on each of two diameters, or six where asked', () => {
    expect(traversePoints(ROUND)).toMatchObject({ ok: true, value: { diameters: 2, acrossDiameter_m: { length: 10 } } })
    expect(traversePoints(ROUND, { onDiameter: 6 })).toMatchObject({
      ok: true,
      value: { acrossDiameter_m: { length: 6 } },
    })
  })

  test.each([0, -1, 1e9, Number.NaN])('[limit] a diameter of %f in is refused', (diameter) => {
    expect(traversePoints({ kind: 'round', diameter: inches(diameter) }).ok).toBe(false)
  })
})

describe('velocity', () => {
  test('[property] 600 ft/min in a 14 in round duct is velocity times area', () => {
    const { airflow } = found(ROUND, { kind: 'velocity', velocities_m_s: same(20, 600 * FPM) })
    expect(airflow.si).toBeCloseTo(600 * FPM * (Math.PI / 4) * (14 * INCH) ** 2, 9)
  })

  test('[property] instrument, area and profile add in quadrature', () => {
    const duct: Duct = { kind: 'rectangular', width: inches(20, 0.2), height: inches(20, 0.2) }
    const { airflow } = found(duct, { kind: 'velocity', velocities_m_s: same(25, 3), u_m_s: 0.09 })
    expect(airflow.u! / airflow.si).toBeCloseTo(Math.hypot(0.03, 0.01, 0.01, 0.02), 9)
  })

  test('[property] an uneven profile says so and is less certain', () => {
    const even = found(SQUARE, { kind: 'velocity', velocities_m_s: same(25, 3) })
    const jet = found(SQUARE, { kind: 'velocity', velocities_m_s: [...same(15, 0.3), ...same(10, 6)] })
    expect(jet.airflow.u! / jet.airflow.si).toBeGreaterThan(2 * (even.airflow.u! / even.airflow.si))
    expect(jet.evidence.from.map((e) => render(e.statement, INCH_POUND)).join('|')).toContain('uneven profile')
  })
})

describe('hostile traverses', () => {
  test.each<[string, Duct, TraverseReadings, string]>([
    ['no points', SQUARE, { kind: 'velocity', velocities_m_s: [] }, 'traverse'],
    ['a million points', SQUARE, { kind: 'velocity', velocities_m_s: same(1_000_000, 3) }, 'traverse'],
    ['a point left out', SQUARE, { kind: 'velocity', velocities_m_s: same(24, 3) }, 'traverse'],
    ['a rectangular count in a round duct', ROUND, { kind: 'velocity', velocities_m_s: same(25, 3) }, 'traverse'],
    [
      'a velocity that is no number',
      SQUARE,
      { kind: 'velocity', velocities_m_s: [Number.NaN, ...same(24, 3)] },
      'velocity at point 1',
    ],
    ['a gale', SQUARE, { kind: 'velocity', velocities_m_s: same(25, 61) }, 'velocity at point 1'],
    ['still air', SQUARE, { kind: 'velocity', velocities_m_s: same(25, 0) }, 'airflow by traverse'],
    [
      'an uncertainty that is no number',
      SQUARE,
      { kind: 'velocity', velocities_m_s: same(25, 3), u_m_s: Number.NaN },
      'uncertainty of the velocity',
    ],
    ['a pressure that is no number', SQUARE, pressures(25, Number.NaN), 'velocity at point 1'],
    [
      'a duct without a height',
      { kind: 'rectangular', width: inches(20), height: inches(0) },
      pressures(25, 0.04),
      'duct height',
    ],
  ])('[limit] %s', (_, duct, readings, field) => {
    expect(airflowByTraverse(duct, readings, airOf(STANDARD_DENSITY))).toMatchObject({ ok: false, error: { field } })
  })
})
