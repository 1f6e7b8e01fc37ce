import type { Assessment } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, Visit } from '@chargewright/visit'
import type { Lessons } from '../session/lessons.ts'
import type { OtherRemark } from '../session/remarks.ts'
import type { Kept, Session } from '../session/session.ts'
import type { Assessed } from '../worker/protocol.ts'
import type { Asking } from '../worker/use-answer.ts'
import { ActKey } from './act-key.tsx'
import { CautionList } from './caution-list.tsx'
import { ConditionList } from './condition-list.tsx'
import { EngineState } from './engine-state.tsx'
import { FindingBlock } from './finding-block.tsx'
import { InTurn } from './in-turn.tsx'
import { LearntPlace } from './learnt-place.tsx'
import { LookAlikeList } from './look-alike-list.tsx'
import { OtherRemarks } from './other-remarks.tsx'
import { WaitPlace } from './wait-place.tsx'

interface Props {
  readonly visit: Visit
  readonly asking: Asking<Assessed>
  readonly others: readonly OtherRemark[]
  /** Id of the system. */
  readonly system: string
  readonly lessons: Lessons
  readonly session: Session
  /** Absent on the practice bench, where time is its own. */
  readonly record: ((fact: Fact) => Kept) | undefined
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** What the engine says of a visit: the finding with what to do now, then what it was found from and with. */
export function VisitAnswer({ visit, asking, others, system, lessons, session, record, units, showEntry }: Props) {
  const { assessment, learntFrom } = asking.answer ?? {}
  const shown = { units, showEntry }
  const doubts = <OtherRemarks remarks={others} showEntry={showEntry} />
  return (
    <>
      <EngineState asking={asking} />
      {assessment ? (
        <InTurn>
          <FindingBlock
            assessment={assessment}
            doing={
              <>
                {doubts}
                <WaitPlace visit={visit} assessment={assessment} units={units} record={record} />
                <ActKey finding={assessment.finding} system={visit.system} isPractice={record === undefined} />
                <CautionList cautions={cautionsHere(assessment)} units={units} />
              </>
            }
            {...shown}
          />
          <ConditionList conditions={assessment.conditions} {...shown} />
          <LookAlikeList lookAlikes={assessment.lookAlikes} {...shown} />
          <LearntPlace system={system} lessons={lessons} learntFrom={learntFrom ?? 0} session={session} />
        </InTurn>
      ) : (
        doubts
      )}
    </>
  )
}

/** Cautions of the finding; what every gauge asks for stands beside the gauges, unless the circuit is to be opened. */
function cautionsHere({ cautions, beside, finding }: Assessment): Assessment['cautions'] {
  const atGauge = beside['connect-gauge'].map(({ id }) => id)
  const isOpened = finding.dose !== undefined || finding.kind === 'not-the-charge'
  return isOpened ? cautions : cautions.filter(({ id }) => !atGauge.includes(id))
}
