import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'
import { AFTER, TYPED_AFTER, timeOfReading } from './timed-entry.ts'

interface Props {
  /** When the test began: a reading whose time is left empty is from now. */
  readonly begun?: string
  readonly initial?: FactOf<'pressure-test-reading'>
  readonly keepLabel?: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** One later reading of a standing test. */
export function PressureReadingForm({ begun, initial, units, keepLabel = 'Enter the reading', record }: Props) {
  return (
    <BlankForm
      blanks={prefilled({ ...TEST_READING, after: begun === undefined ? TYPED_AFTER : AFTER }, initial)}
      units={units}
      keepLabel={keepLabel}
      keep={async ({ pressure = '', temperature = '', after: typed }) => {
        const after = timeOfReading(typed, begun)
        return after.ok ? record({ kind: 'pressure-test-reading', after: after.value, pressure, temperature }) : after
      }}
    />
  )
}

export const TEST_READING = {
  pressure: {
    label: 'Test pressure',
    accepts: ['gauge pressure', 'absolute pressure'],
    example: 'for example 300 psig or 20.7 bar',
  },
  temperature: {
    label: 'Temperature of the gas',
    accepts: ['temperature'],
    example: 'on the pipe, in the shade: 72 °F or 22 °C',
  },
} as const
