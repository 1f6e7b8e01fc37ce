import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxRegion, convexRegion, type DewPair, outsideRegion } from './region.ts'

const pair = (suctionDew_K: number, dischargeDew_K: number): DewPair => ({ suctionDew_K, dischargeDew_K })

test('[property] the hull of a square with points inside and on its edges has four corners', () => {
  const points = [0, 1, 2].flatMap((s) => [0, 1, 2].map((d) => pair(270 + s, 300 + d)))
  const region = convexRegion(points)
  expect(region.ok && region.value).toEqual(boxRegion([270, 272], [300, 302]))
})

test('[property] every point is in its own hull, and so is the middle of any two', () => {
  // In hundredths of a kelvin: finer than any table, and coarse enough that no edge is a mere rounding.
  const t = fc.integer({ min: 20_000, max: 37_000 }).map((n) => n / 100)
  fc.assert(
    fc.property(fc.array(fc.tuple(t, t), { minLength: 3, maxLength: 30 }), (rows) => {
      const points = rows.map(([s, d]) => pair(s, d))
      const region = convexRegion(points)
      if (!region.ok) return
      for (const a of points) {
        expect(outsideRegion(region.value, a)).toBeUndefined()
        const [b] = points
        const middle = pair((a.suctionDew_K + b!.suctionDew_K) / 2, (a.dischargeDew_K + b!.dischargeDew_K) / 2)
        expect(outsideRegion(region.value, middle)).toBeUndefined()
      }
    }),
    { seed: 9, numRuns: 300 },
  )
})

describe('outside', () => {
  const triangle = [pair(250, 300), pair(280, 300), pair(280, 330)]
  test('[limit] says which temperature, and what it may be at the other', () => {
    expect(outsideRegion(triangle, pair(265, 320))).toMatchObject({ value: 320, min: 300 - 1e-9, max: 315 + 1e-9 })
    expect(outsideRegion(triangle, pair(249, 300))).toMatchObject({
      field: 'suction dew temperature',
      min: 250,
      max: 280,
    })
    expect(outsideRegion(triangle, pair(280, 330))).toBeUndefined()
  })

  test('[limit] points on one line are no region', () => {
    expect(convexRegion([pair(250, 300), pair(260, 310), pair(270, 320)])).toMatchObject({
      ok: false,
      error: { kind: 'missing' },
    })
  })
})
