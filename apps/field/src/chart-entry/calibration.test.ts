import fc from 'fast-check'
import { expect, test } from 'vitest'
import { calibration, type Spot } from './calibration.ts'

/** A chart of 55 to 115 across and 0 to 40 up, photographed at an angle, askew and in any size. */
const photos = fc.record({
  turn: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
  skew: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  size: fc.double({ min: 1, max: 50, noNaN: true }),
})

const photographed =
  ({ turn, skew, size }: { turn: number; skew: number; size: number }) =>
  (across: number, up: number): Spot => {
    const [x, y] = [size * (across - 55 + skew * up), -size * up]
    return { x: 900 + x * Math.cos(turn) - y * Math.sin(turn), y: 1200 + x * Math.sin(turn) + y * Math.cos(turn) }
  }

test('[property] values come back from any photo that was taken from straight above, and spots from values', () => {
  fc.assert(
    fc.property(
      photos,
      fc.double({ min: 55, max: 115, noNaN: true }),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (photo, across, up) => {
        const at = photographed(photo)
        // The marks need not lie on the drawn axes: each tells of its own axis only.
        const found = calibration(
          [
            { at: at(60, 3), value: 60 },
            { at: at(110, 3), value: 110 },
          ],
          [
            { at: at(57, 5), value: 5 },
            { at: at(57, 35), value: 35 },
          ],
        )!
        const value = found.valueAt(at(across, up))
        expect(value.across).toBeCloseTo(across, 6)
        expect(value.up).toBeCloseTo(up, 6)
        const spot = found.spotOf(across, up)
        expect(spot.x).toBeCloseTo(at(across, up).x, 6)
        expect(spot.y).toBeCloseTo(at(across, up).y, 6)
      },
    ),
    { seed: 5 },
  )
})

test('[limit] marks in one place, of one value, or in one line are no axes', () => {
  const mark = (x: number, y: number, value: number) => ({ at: { x, y }, value })
  const up = [mark(0, 100, 0), mark(0, 0, 40)] as const
  expect(calibration([mark(0, 0, 60), mark(0, 0, 110)], up)).toBeUndefined()
  expect(calibration([mark(0, 0, 60), mark(100, 0, 60)], up)).toBeUndefined()
  expect(calibration([mark(0, 0, 60), mark(1, 100, 110)], up)).toBeUndefined()
})
