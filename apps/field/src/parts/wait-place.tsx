import type { Assessment, Step } from '@chargewright/charging'
import { format, type UnitPreference } from '@chargewright/quantity'
import { type Fact, lastChange, type Visit } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { stepList } from '../session/step-progress.ts'
import { latestEntry, waitClock } from '../session/wait-clock.ts'
import { StepGuide } from './step-guide.tsx'
import { useLazy } from './use-lazy.ts'

interface Props {
  readonly visit: Visit
  readonly assessment: Assessment
  readonly units: UnitPreference
  /** Left out on the practice bench, whose time is not that of this device. */
  readonly record: ((fact: Fact) => Kept) | undefined
}

/** Far too full, it is neither started nor waited for. */
const isToStandStill = ({ finding, conditions }: Assessment): boolean =>
  (finding.kind === 'recover' && finding.dose?.compressor === 'stopped') ||
  conditions.some(({ id, state }) => id === 'not-overfilled' && state === 'unmet')

/** What to do now, and the wait that goes on meanwhile. */
export function WaitPlace({ visit, assessment, units, record }: Props) {
  const { steps } = assessment.finding
  const change = lastChange(visit)
  const list = stepList(steps, change)
  const clock = record && !isToStandStill(assessment) ? waitClock(visit, change, assessment.conditions) : undefined
  const Clock = useLazy(clock !== undefined, async () => (await import('./settle-clock.tsx')).SettleClock)
  const begin =
    record &&
    (({ purpose, duration }: NonNullable<Step['wait']>) => {
      const ends = new Date(Date.now() + duration.si * 1000).toISOString()
      return record({ kind: 'wait', purpose, duration: format(duration, units), ends })
    })
  return (
    <>
      <StepGuide
        key={list}
        visitId={visit.id}
        list={list}
        steps={steps}
        units={units}
        // What the scale showed, once entered, begins the wait by itself.
        begin={clock || assessment.finding.dose ? undefined : begin}
      />
      {clock && record && Clock && <Clock clock={clock} latest={latestEntry(visit)} units={units} record={record} />}
    </>
  )
}
