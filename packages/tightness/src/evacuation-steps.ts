import { type Statement, say } from '@chargewright/quantity'
import type { HoldCriterion } from './hold-criterion.ts'
import type { HoldKind } from './hold-verdict.ts'
import type { RiseCause } from './rise-cause.ts'

/**
 * What to do now, in order: common practice.
 *
 * @param doomed the leak alone is sure to break the criterion before its time is up
 */
export function evacuationSteps(
  kind: HoldKind,
  cause: RiseCause,
  doomed: boolean,
  { start, hold }: HoldCriterion,
): readonly Statement[] {
  const again = say`Pull down to ${start}, shut off and watch for ${hold} again`
  const leaks = cause === 'leak' || cause === 'leak-and-moisture'
  switch (kind) {
    case 'not-deep-enough':
      return [say`Pump on; where it does not come down, check the pump's oil, the hoses and the valve cores`, again]
    case 'too-cold':
      return [say`Warm the coldest spot`, again]
    case 'falling':
      return [say`See that the pump is shut off and that system and gauge have come to rest`, again]
    case 'keep-watching':
      return doomed
        ? [say`No need to wait: the leak alone will take it above the limit`, ...remedy(cause), again]
        : [say`Leave it shut off and write down a reading every minute or so until ${hold} have passed`]
    case 'pass':
      return leaks
        ? [say`It passes, but it rises steadily: before charging, check hoses, gauge and valve cores`]
        : [CHARGE]
    case 'not-held':
      return [...remedy(cause), again]
  }
}

function remedy(cause: RiseCause): readonly Statement[] {
  switch (cause) {
    case 'leak':
      return [HOSES_FIRST, FIND_LEAK]
    case 'leak-and-moisture':
      return [HOSES_FIRST, FIND_LEAK, ...DRY_OUT]
    case 'moisture':
      return DRY_OUT
    case 'tight':
    case 'falling':
    case 'cannot-tell':
      return [say`Write down a reading every minute or so and longer: a leak goes on rising, moisture levels`]
  }
}

const CHARGE = say`Charge into the vacuum without letting air in on the way`
const HOSES_FIRST = say`Check the hoses, the gauge and the valve cores first`
const FIND_LEAK = say`Break the vacuum with regulated dry nitrogen, no higher than the nameplate's test pressure; find the leak and repair it`
const DRY_OUT = [
  say`Break the vacuum with dry nitrogen, let it take up the moisture and pull down again, until it holds`,
  say`Warm the cold parts; change the filter-drier and the pump's oil`,
]
