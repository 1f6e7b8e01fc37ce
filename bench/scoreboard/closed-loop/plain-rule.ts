import { measured } from '../judges/measured.ts'
import { MOST_STEPS, type Policy, type Run } from './policy.ts'

/**
 * The trade's rule without any model: superheat within 5 °F of (3 WB − 80 − DB)/2 on a fixed device, nameplate subcooling
 * within 3 °F on a valve, in steps of 5 % of the nameplate charge.
 *
 * @source common practice; tolerances: California RA3.2 (2008)
 */
export const plainRule: Policy = {
  name: 'plain rule',
  run: (plant) => {
    let [steps, harmful] = [0, 0]
    const ended = (how: Run['ended']): Run => ({ ended: how, steps, harmful, asked: 0 })
    for (;;) {
      const readings = plant.read('everything')
      if (!readings) return steps === 0 ? undefined : ended('no longer runs')
      const { superheat, subcooling } = measured({ plate: plant.plate, readings })
      const rated = plant.plate.subcooling_K
      const short =
        plant.plate.device === 'thermostatic'
          ? ((rated ?? Number.NaN) - (subcooling ?? Number.NaN)) / (3 / 1.8)
          : (superheat - ruleOfThumb_K(readings.outdoor_K, readings.returnWetBulb_K)) / (5 / 1.8)
      if (Number.isNaN(short)) return undefined
      if (Math.abs(short) <= 1) return ended('satisfied')
      if (steps === MOST_STEPS) return ended('too many steps')
      if (plant.weigh(Math.sign(short) * STEP * plant.plate.charge_kg).harm) harmful++
      steps++
    }
  },
}

const STEP = 0.05
const F = (T: number) => T * 1.8 - 459.67

/** Target superheat of the trade's rule, K; below 5 °F it has none. */
export const ruleOfThumb_K = (outdoor_K: number, wetBulb_K: number): number =>
  (3 * F(wetBulb_K) - 80 - F(outdoor_K)) / 3.6
