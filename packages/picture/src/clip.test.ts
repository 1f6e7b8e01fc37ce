import fc from 'fast-check'
import { expect, test } from 'vitest'
import { clip } from './clip.ts'

const box = { left: 0, top: 0, right: 10, bottom: 10 }

test('[property] what lies inside comes back as it is, in one piece', () => {
  const path = [
    { x: 1, y: 1 },
    { x: 5, y: 9 },
    { x: 9, y: 2 },
  ]
  expect(clip(path, box)).toEqual([path])
})

test('[property] a line that leaves and comes back is cut in two at the edges', () => {
  const pieces = clip(
    [
      { x: 5, y: 5 },
      { x: 15, y: 5 },
      { x: 5, y: 7 },
    ],
    box,
  )
  expect(pieces).toEqual([
    [
      { x: 5, y: 5 },
      { x: 10, y: 5 },
    ],
    [
      { x: 10, y: 6 },
      { x: 5, y: 7 },
    ],
  ])
})

test('[limit] outside, and a single point, leave nothing', () => {
  expect(
    clip(
      [
        { x: -5, y: 11 },
        { x: 15, y: 11 },
      ],
      box,
    ),
  ).toEqual([])
  expect(clip([{ x: 5, y: 5 }], box)).toEqual([])
})

test('[property] every point of every piece lies in the box and on its segment', () => {
  const point = fc.record({ x: fc.integer({ min: -20, max: 30 }), y: fc.integer({ min: -20, max: 30 }) })
  fc.assert(
    fc.property(point, point, (a, b) => {
      for (const { x, y } of clip([a, b], box).flat()) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9)
        expect(Math.max(x, y)).toBeLessThanOrEqual(10 + 1e-9)
        expect(Math.abs((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x))).toBeLessThan(1e-6)
      }
    }),
    { seed: 3, numRuns: 2000 },
  )
})
