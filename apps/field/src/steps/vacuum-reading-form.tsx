import type { UnitPreference } from '@chargewright/quantity'
import { type Fact, vacuumText } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { AFTER, timeOfReading } from './timed-entry.ts'

interface Props {
  /** When the valve was shut. */
  readonly begun: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** One reading of the vacuum gauge. */
export function VacuumReadingForm({ begun, units, record }: Props) {
  return (
    <BlankForm
      blanks={{ pressure: VACUUM, after: AFTER }}
      units={units}
      keepLabel="Enter the reading"
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
