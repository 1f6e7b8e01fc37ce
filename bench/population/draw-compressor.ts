import type { Compressor } from './compressor-law.ts'
import type { Random } from './random.ts'

/** A compressor of sweep 1, to be scaled. Finer models get better motors, and more of them are scrolls. */
export function drawCompressor({ uniform, chance }: Random, fine: number): Compressor {
  const motor = {
    motor: uniform(0.82, 0.87) + 0.05 * fine,
    motorFall: uniform(0.05, 0.25),
    slip: 0,
    ratedPower_W: 1,
    sweep: 1,
  }
  return chance(0.35 + 0.35 * fine)
    ? {
        kind: 'scroll',
        ...motor,
        shellLoss: uniform(0.02, 0.08),
        volumeRatio: uniform(2, 2.7),
        friction: uniform(0.04, 0.1),
        fall: uniform(0.018, 0.045),
      }
    : {
        kind: 'piston',
        ...motor,
        shellLoss: uniform(0.06, 0.16),
        clearance: uniform(0.03, 0.07),
        shellGain: uniform(8, 20),
        reeds: uniform(0.02, 0.05),
        friction: uniform(0.03, 0.08),
      }
}
