import type { RiseFit } from './fit-rise.ts'

/**
 * What a fit says of the cause. `tight`: no rise beyond the scatter. `moisture`: a rise that levels, and no leak seen.
 * `falling`: the pressure goes down, so that the system is not shut off or not yet at one temperature. `cannot-tell`:
 * a leak that would matter could hide in the readings, or a slow rise could still be either.
 */
export type RiseCause = 'tight' | 'leak' | 'moisture' | 'leak-and-moisture' | 'falling' | 'cannot-tell'

/**
 * A leak is called when the whole 90 % interval lies above zero. It is excluded (`tight`, `moisture`) only when the
 * interval holds zero and a leak of `matters_Pa_s` would have shown; so that a leak above the detection limit is
 * overlooked in at most 5 % of logs.
 *
 * @param matters_Pa_s the leak that must not be overlooked
 * @source Currie 1968, Anal. Chem. 40(3), 586–593: errors of both kinds at 5 %
 */
export function riseCause(fit: RiseFit, matters_Pa_s: number): RiseCause {
  const { best, leak, detectable_Pa_s } = fit
  if (leak.low > 0) return best.kind === 'leak' || best.kind === 'steady' ? 'leak' : 'leak-and-moisture'
  if (leak.high < -detectable_Pa_s) return 'falling'
  if (detectable_Pa_s > matters_Pa_s) return 'cannot-tell'
  switch (best.kind) {
    case 'steady':
      return 'tight'
    case 'moisture':
      return 'moisture'
    case 'leak':
    case 'leak-and-moisture':
      return 'cannot-tell'
  }
}
