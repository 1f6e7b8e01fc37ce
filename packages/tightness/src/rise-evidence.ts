import { type Evidence, evidence, quantity, say } from '@chargewright/quantity'
import type { RiseFit } from './fit-rise.ts'
import type { HoldCriterion } from './hold-criterion.ts'
import type { PressureLog } from './pressure-log.ts'
import type { RiseCause } from './rise-cause.ts'
import { NORMAL_95 } from './student-t.ts'

/**
 * The cause in words, its leak as the pressure that the leak alone would make from the first reading within the time
 * of the criterion: a rate in micron per hour means little to anyone who has to judge a gauge.
 */
export function riseEvidence(fit: RiseFit, cause: RiseCause, log: PressureLog, { hold }: HoldCriterion): Evidence {
  const after = (leak: number, u?: number) =>
    quantity('absolute pressure', log[0]!.pressure_Pa + leak * hold.si, u === undefined ? undefined : u * hold.si)
  const leakAlone = after(fit.leak.best, fit.detectable_Pa_s / (2 * NORMAL_95))
  const shown = after(fit.detectable_Pa_s)
  switch (cause) {
    case 'leak':
      return evidence(say`It rises steadily: the leak alone would make it ${leakAlone} after ${hold}`, SOURCE)
    case 'leak-and-moisture':
      return evidence(
        say`It rises steadily and levels in part: moisture, and a leak that alone would make it ${leakAlone} after ${hold}`,
        SOURCE,
      )
    case 'moisture':
      return evidence(say`It levels, as moisture does; a leak to ${shown} after ${hold} would have shown`, SOURCE)
    case 'tight':
      return evidence(
        say`It does not rise beyond its scatter; a leak to ${shown} after ${hold} would have shown`,
        SOURCE,
      )
    case 'falling':
      return evidence(say`It falls: something still pumps, or the system or the gauge was not yet at rest`, SOURCE)
    case 'cannot-tell': {
      const hidden = after(Math.max(fit.leak.high, 0))
      return evidence(
        say`A leak to ${hidden} after ${hold} cannot be told from moisture or scatter with these readings`,
        SOURCE,
      )
    }
  }
}

const SOURCE = '90 % interval of the leak beside any moisture (profile likelihood)'
