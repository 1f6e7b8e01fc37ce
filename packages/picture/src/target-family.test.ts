import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { example } from '../../../examples/example-visits.ts'
import { linearAxis } from './axis.ts'
import { indoorOf, targetFamily } from './target-family.ts'

const outdoors = linearAxis('outdoors', [60, 110], 6)

function curves(name: string) {
  const { visit, assessment } = example(name)
  return targetFamily(visit, indoorOf(visit, assessment)!, outdoors, INCH_POUND)
}

const at = (points: readonly { x: number; y: number }[], x: number) => points.find((point) => point.x === x)?.y

test('[property] without a maker’s chart they are those of the model of this system: its own target lies on its own curve', () => {
  const { visit, assessment } = example('orifice-add')
  const family = targetFamily(visit, indoorOf(visit, assessment)!, outdoors, INCH_POUND)
  const outdoor_F = visit.readings['condenser-entering-air']!.quantity.si * 1.8 - 459.67
  const own = family[3]!.points
  const next = own.findIndex(({ x }) => x >= outdoor_F - 1e-6)
  const target_F = assessment.target!.quantity.si * 1.8
  expect(own[next]!.y).toBeLessThan(target_F + 1)
  expect(own[next]!.y).toBeGreaterThan(target_F - 1)
})

test('[property] with neither chart nor model the curves are the rule of thumb, worked by hand', () => {
  const { visit, assessment } = example('orifice-add')
  const { nominalCapacity: _, ...figures } = visit.system.figures
  const unsized = { ...visit, system: { ...visit.system, figures } }
  const family = targetFamily(unsized, indoorOf(visit, assessment)!, outdoors, INCH_POUND)
  expect(family.map(({ name }) => name)).toEqual(['58°', '61°', '64°', '67°', '70°', '73°', '76°'])
  // (3·WB − 80 − DB)/2 in °F: common practice, as the assessment cites it.
  expect(at(family[3]!.points, 90)).toBeCloseTo((3 * 67 - 80 - 90) / 2, 6)
  expect(at(family[0]!.points, 70)).toBeCloseTo((3 * 58 - 80 - 70) / 2, 6)
})

test('[property] with a maker’s chart they are its own figures, and end where it ends', () => {
  const family = curves('orifice-makers-chart')
  expect(family[3]!.name).toBe('80°')
  // The invented chart of the example has 24 °F at 85 °F outdoors and 80 °F indoors, 19 °F at 95 °F; 75 °F: 17 and 12.
  expect(at(family[3]!.points, 90)).toBeCloseTo((24 + 19) / 2, 6)
  expect(at(family[2]!.points, 90)).toBeCloseTo((17 + 12) / 2, 6)
  expect(family[3]!.points[0]!.x).toBeGreaterThanOrEqual(65)
  expect(family[6]!.points).toEqual([])
})

test('[limit] no curve begins where it is too cold for a test', () => {
  const { visit, assessment } = example('orifice-cold-outdoors')
  const family = targetFamily(visit, indoorOf(visit, assessment)!, linearAxis('outdoors', [40, 110], 7), INCH_POUND)
  // 55 °F: RA3.2 (2008), as charging holds it.
  expect(Math.min(...family.flatMap(({ points }) => points.map(({ x }) => x)))).toBe(56)
})

test('[limit] no curve goes on where the target is too low for a valid test', () => {
  const lowest = Math.min(...curves('orifice-add').flatMap(({ points }) => points.map(({ y }) => y)))
  expect(lowest).toBeGreaterThanOrEqual(5)
})

test('[property] both unit systems draw the same targets', () => {
  const { visit, assessment } = example('orifice-add')
  const metric = targetFamily(visit, indoorOf(visit, assessment)!, linearAxis('outdoors', [15, 45], 6), METRIC)
  const point = metric[3]!.points.find(({ x }) => x === 35)!
  expect(point.y).toBeCloseTo(assessment.target!.quantity.si, 6)
})
