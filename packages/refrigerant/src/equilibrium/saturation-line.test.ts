import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computed, everyRefrigerant } from '../../test/computed.ts'
import { evaluatePhase, phaseOf } from '../mixture/phase.ts'
import { solveIncipient } from './incipient.ts'
import { onLine, type SaturationLine, solveLine } from './saturation-line.ts'

const refrigerants = everyRefrigerant()
const RUNS = { numRuns: 10_000, seed: 3 }

describe('saturation line', () => {
  it('[property] 2,000 solves anywhere: fugacities and pressures of both phases agree', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...refrigerants),
        fc.boolean(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ engine }, dew, share) => {
          const line = dew ? engine.dew : engine.bubble
          const lnT = temperatureAt(line, share, engine.limits.saturation.maxTemperature_K)
          expect(solveLine(line, 'temperature', lnT)).toBe(true)
          const { u, model, z, lnP } = line.work
          const count = z.length
          const T = Math.exp(u[count + 1]!)
          const given = phaseOf(model)
          const other = phaseOf(model)
          for (let i = 0; i < count; i++) {
            given.partial[i] = Math.exp(u[count]!) * z[i]!
            other.partial[i] = Math.exp(u[i]!)
          }
          evaluatePhase(model, given, T, false)
          evaluatePhase(model, other, T, false)
          for (let i = 0; i < count; i++) expect(Math.abs(given.lnF[i]! - other.lnF[i]!)).toBeLessThan(1e-8)
          const P = Math.exp(lnP) / (model.gasConstant_J_molK * T)
          // A cold liquid's pressure is the small difference of terms as large as its density.
          const roundOff = 1e-11 * Math.max(given.density, other.density)
          expect(Math.abs(given.P - other.P)).toBeLessThan(1e-6 * P + roundOff)
          expect(Math.abs((line.work.side === 'bubble' ? other : given).P / P - 1)).toBeLessThan(1e-8)
        },
      ),
      { ...RUNS, numRuns: 2_000 },
    )
  })

  it('[property] 10,000 random starts: false roots are found by Newton, and none is accepted', () => {
    let accepted = 0
    let refused = 0
    fc.assert(
      fc.property(
        fc.constantFrom(...refrigerants),
        fc.boolean(),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
        ({ engine }, dew, share, shift) => {
          const line = dew ? engine.dew : engine.bubble
          const lnT = temperatureAt(line, share, engine.limits.saturation.maxTemperature_K)
          expect(solveLine(line, 'temperature', lnT)).toBe(true)
          const truth = line.work.u.slice()
          for (let k = 0; k < truth.length - 1; k++) line.work.u[k]! += 1.5 * shift[k]!
          if (solveIncipient(line.work, 'temperature', lnT, 60) === 0) return
          if (!onLine(line, 'temperature', lnT)) refused++
          else {
            accepted++
            for (let k = 0; k < truth.length; k++) expect(Math.abs(line.work.u[k]! - truth[k]!)).toBeLessThan(1e-5)
          }
        },
      ),
      RUNS,
    )
    expect(accepted).toBeGreaterThan(1_000)
    expect(refused).toBeGreaterThan(100)
  })

  it('[limit] outside the traced line there is no answer', () => {
    const { bubble } = computed('R-410A').engine
    expect(solveLine(bubble, 'temperature', Math.log(100))).toBe(false)
    expect(solveLine(bubble, 'temperature', Math.log(400))).toBe(false)
    expect(solveLine(bubble, 'temperature', Number.NaN)).toBe(false)
    expect(solveLine(bubble, 'pressure', Number.POSITIVE_INFINITY)).toBe(false)
  })
})

function temperatureAt(line: SaturationLine, share: number, highest: number): number {
  return line.lnT[0]! + share * (Math.min(Math.log(highest), line.lnT.at(-1)!) - line.lnT[0]!)
}
