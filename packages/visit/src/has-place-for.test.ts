import { expect, test } from 'vitest'
import { hasPlaceFor } from './has-place-for.ts'
import { READING_IDS } from './reading-kind.ts'

const missing = (facts: Parameters<typeof hasPlaceFor>[1]) => READING_IDS.filter((id) => !hasPlaceFor(id, facts))

test('[limit] a system of which nothing is said may have every place', () => {
  expect(missing({})).toEqual([])
})

test('[property] an air conditioner has no box, and an orifice no bulb at the coil', () => {
  expect(missing({ application: 'comfort-cooling', meteringDevice: 'fixed-orifice' })).toEqual([
    'box-temperature',
    'evaporator-outlet-temperature',
  ])
  expect(missing({ application: 'heat-pump-cooling', meteringDevice: 'thermostatic' })).toEqual(['box-temperature'])
  expect(missing({ application: 'low-temperature', meteringDevice: 'capillary' })).toEqual([
    'evaporator-outlet-temperature',
  ])
  expect(missing({ application: 'medium-temperature', meteringDevice: 'electronic' })).toEqual([])
})
