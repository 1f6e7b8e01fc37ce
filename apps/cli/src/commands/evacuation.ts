import { fail, findUnit, kelvin, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import {
  type EvacuationFinding,
  HOLD_CRITERIA,
  type HoldCriterion,
  judgeEvacuation,
  readPressureLog,
} from '@chargewright/tightness'
import { vacuumText } from '@chargewright/visit'
import { unreadable } from '../failure.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { typedReading } from '../typed-reading.ts'

export interface EvacuationFlags {
  readonly criterion: keyof typeof HOLD_CRITERIA
  /** What the maker prints goes before the criteria on file; each as typed. */
  readonly start?: string
  readonly limit?: string
  readonly hold?: string
  readonly resolution?: string
  readonly coldest?: string
  /** Of bare numbers, where no heading names one. */
  readonly unit?: string
}

/** @param log CSV of time and pressure from the moment of shutting off */
export function evacuation(log: string, flags: EvacuationFlags): Result<EvacuationFinding, readonly Problem[]> {
  const unit = flags.unit === undefined ? undefined : findUnit(vacuumText(flags.unit), 'absolute pressure')
  if (flags.unit !== undefined && !unit) {
    return fail([unreadable('unit', flags.unit, 'a unit of absolute pressure, such as micron or Pa')])
  }
  const vacuum = (field: 'start' | 'limit' | 'resolution') => ifGiven(flags[field], (text) => typedVacuum(text, field))
  const read = readFlags({
    log: readPressureLog(log, unit),
    start: vacuum('start'),
    limit: vacuum('limit'),
    resolution: vacuum('resolution'),
    hold: ifGiven(flags.hold, (text) => typedReading(text, 'duration', 'hold')),
    coldest: ifGiven(flags.coldest, (text) => typedReading(text, 'temperature', 'coldest')),
  })
  if (!read.ok) return read
  const { start, limit, hold, resolution, coldest } = read.value
  const finding = judgeEvacuation(read.value.log, {
    criterion: criterion(flags.criterion, { start, limit, hold }),
    ...(resolution ? { resolution } : {}),
    ...(coldest ? { coldestSpot: kelvin(coldest.si) } : {}),
  })
  return finding.ok ? finding : fail([finding.error])
}

/** The criterion on file with what was typed in its place, which then is the source. */
function criterion(
  name: EvacuationFlags['criterion'],
  typed: { readonly [Name in 'start' | 'limit' | 'hold']: HoldCriterion[Name] | undefined },
): HoldCriterion {
  const onFile = HOLD_CRITERIA[name]
  const { start = onFile.start, limit = onFile.limit, hold = onFile.hold } = typed
  const own = start !== onFile.start || limit !== onFile.limit || hold !== onFile.hold
  return { start, limit, hold, source: own ? 'criterion as typed' : onFile.source }
}

const typedVacuum = (text: string, field: string): Result<Quantity<'absolute pressure'>, Problem> =>
  typedReading(vacuumText(text), 'absolute pressure', field)
