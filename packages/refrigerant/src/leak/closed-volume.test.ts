import { describe, expect, it } from 'vitest'
import { computed } from '../../test/computed.ts'
import { solveLine } from '../equilibrium/saturation-line.ts'
import { evaluatePhase } from '../mixture/phase.ts'
import { closedVolume, solveClosedVolume } from './closed-volume.ts'
import { leakPath } from './leak-path.ts'

function filled(name: string, T: number, liquidShare: number) {
  const { model, bubble, moleFractions } = computed(name).engine
  const count = moleFractions.length
  if (!solveLine(bubble, 'temperature', Math.log(T))) throw new Error('no bubble point')
  const { u } = bubble.work
  const volume = closedVolume(model, T)
  for (let i = 0; i < count; i++) {
    volume.u[i] = u[count]! + Math.log(moleFractions[i]!)
    volume.u[count + i] = u[i]!
  }
  volume.u[2 * count] = liquidShare
  const content = moleFractions.map((x) => x * liquidShare * Math.exp(u[count]!))
  if (!solveClosedVolume(volume, content)) throw new Error('no equilibrium')
  return { volume, content }
}

describe('closed volume', () => {
  it('[property] both phases together hold every component to 1e-9, and agree in pressure', () => {
    for (const name of ['R-407C', 'R-448A', 'R-455A', 'R-470A']) {
      const { volume, content } = filled(name, 290, 0.4)
      const count = content.length
      const share = volume.u[2 * count]!
      for (let i = 0; i < count; i++) {
        const inside = share * Math.exp(volume.u[i]!) + (1 - share) * Math.exp(volume.u[count + i]!)
        expect(Math.abs(inside / content[i]! - 1)).toBeLessThan(1e-9)
      }
      // The phases hold the evaluation before the last step; here they are brought to the solution.
      for (const [phase, start] of [
        [volume.liquid, 0],
        [volume.vapour, count],
      ] as const) {
        phase.partial.set(volume.u.subarray(start, start + count).map(Math.exp))
        evaluatePhase(volume.model, phase, volume.temperature, false)
      }
      expect(volume.liquid.P / volume.vapour.P).toBeCloseTo(1, 7)
    }
  })

  it('[property] twelve steps to 80 % keep the composition of four hundred steps to 1e-5', () => {
    for (const name of ['R-407C', 'R-455A']) {
      const coarse = filled(name, 298.15, 0.3)
      const fine = filled(name, 298.15, 0.3)
      const a = leakPath(coarse.volume, coarse.content, 'vapour', 0.8, 12)!.at(-1)!.content
      const b = leakPath(fine.volume, fine.content, 'vapour', 0.8, 400)!.at(-1)!.content
      const total = b.reduce((sum, n) => sum + n, 0)
      for (const [i, n] of b.entries()) expect(Math.abs(a[i]! - n) / total).toBeLessThan(1e-5)
    }
  })
})
