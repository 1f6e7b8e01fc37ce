import splits from '../../../packages/charging/data/temperature-split.json' with { type: 'json' }
import targets from '../data/target-superheat.json' with { type: 'json' }
import type { Judge, Seen, Verdict } from '../verdict.ts'
import { type Measured, measured } from './measured.ts'

/**
 * The regulation's procedure as an installer follows it: not below 55 °F outdoors; airflow by the temperature split
 * within 3 °F of its table; then superheat within 5 °F of its table on a fixed device, or subcooling within 3 °F of the
 * nameplate and superheat between 4 and 25 °F on a valve. A dash in the superheat table is no valid test.
 *
 * Where the supply air was not read, or the return air lies outside the split table, the airflow is taken as shown by
 * another of the regulation's tests: the procedure would not stop there, and silence would flatter or hurt it at will.
 *
 * @source California Energy Commission, 2008 Residential Appendices, RA3.2; what follows a superheat too low, a subcooling
 * too high and a split too great is remembered (recover, recover, airflow too low), as are the two tables
 */
export const regulation: Judge = {
  name: 'regulation procedure',
  judge: (seen) => {
    const { readings, plate } = seen
    if (F(readings.outdoor_K) < LEAST_OUTDOOR_F) return { kind: 'no-verdict' }
    const now = measured(seen)
    if ((splitExcess_F(seen, now) ?? 0) > SPLIT_TOLERANCE_F) return { kind: 'other', cause: 'low-indoor-air' }
    return plate.device === 'thermostatic' ? bySubcooling(seen, now) : bySuperheat(seen, now)
  },
}

const LEAST_OUTDOOR_F = 55
const SPLIT_TOLERANCE_F = 3
const SUPERHEAT_TOLERANCE_F = 5
const SUBCOOLING_TOLERANCE_F = 3
const VALVE_SUPERHEAT_F = { low: 4, high: 25 }

const F = (T: number) => T * 1.8 - 459.67
const inF = (difference: number) => difference * 1.8

function bySuperheat({ readings }: Seen, { superheat }: Measured): Verdict {
  const target = superheatTarget_F(F(readings.outdoor_K), F(readings.returnWetBulb_K))
  if (target === undefined) return { kind: 'no-verdict' }
  const over = inF(superheat) - target
  if (Math.abs(over) <= SUPERHEAT_TOLERANCE_F) return { kind: 'hold' }
  return { kind: over > 0 ? 'add' : 'recover' }
}

function bySubcooling({ plate }: Seen, { superheat, subcooling }: Measured): Verdict {
  if (subcooling === undefined || plate.subcooling_K === undefined) return { kind: 'no-verdict', next: 'subcooling' }
  const over = inF(subcooling - plate.subcooling_K)
  if (Math.abs(over) > SUBCOOLING_TOLERANCE_F) return { kind: over > 0 ? 'recover' : 'add' }
  if (inF(superheat) < VALVE_SUPERHEAT_F.low) return { kind: 'other', cause: 'valve-feeds-too-much' }
  if (inF(superheat) > VALVE_SUPERHEAT_F.high) return { kind: 'other', cause: 'valve-feeds-too-little' }
  return { kind: 'hold' }
}

/** The regulation's target at whole degrees, as one reads it from the page; undefined at a dash and off the page. */
export function superheatTarget_F(outdoor_F: number, wetBulb_F: number): number | undefined {
  const row = targets.rows.find((each) => each.outdoor_F === Math.round(outdoor_F))
  return row?.superheat_F[targets.wetBulb_F.indexOf(Math.round(wetBulb_F))] ?? undefined
}

function splitExcess_F({ readings }: Seen, { supplyAirDrop }: Measured): number | undefined {
  const row = splits.returnDryBulbs_F.indexOf(Math.round(F(readings.returnAir_K)))
  const target = splits.splits_F[row]?.[splits.returnWetBulbs_F.indexOf(Math.round(F(readings.returnWetBulb_K)))]
  if (supplyAirDrop === undefined || target === undefined || target === null) return undefined
  return inF(supplyAirDrop) - target
}
