import type { UnitPreference } from '@chargewright/quantity'
import { type Fact, type FactOf, vacuumText } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'
import { AFTER, TYPED_AFTER, timeOfReading } from './timed-entry.ts'

interface Props {
  /** When the valve was shut: a reading whose time is left empty is from now. */
  readonly begun?: string
  readonly initial?: FactOf<'vacuum-reading'>
  readonly keepLabel?: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** One reading of the vacuum gauge. */
export function VacuumReadingForm({ begun, initial, units, keepLabel = 'Enter the reading', record }: Props) {
  return (
    <BlankForm
      blanks={prefilled({ pressure: VACUUM, after: begun === undefined ? TYPED_AFTER : AFTER }, initial)}
      units={units}
      keepLabel={keepLabel}
      keep={async ({ pressure = '', after: typed }) => {
        const after = timeOfReading(typed, begun)
        return after.ok ? record({ kind: 'vacuum-reading', after: after.value, pressure }) : after
      }}
    />
  )
}

export const VACUUM = {
  label: 'Vacuum gauge',
  accepts: ['absolute pressure'],
  example: 'for example 310 micron or 41 Pa',
  readAs: vacuumText,
} as const
