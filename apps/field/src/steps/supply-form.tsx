import { fail, type UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'

interface Props {
  readonly initial?: FactOf<'supply-measured'>
  readonly keepLabel?: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

const volts = (label: string, example: string, optional = false) =>
  ({ label, accepts: ['voltage'], example, optional }) as const

const VOLTAGES = {
  nominal: volts('Nameplate voltage', 'for example 460 V'),
  first: volts('Voltage, or between phases 1 and 2', 'for example 462 V'),
  second: volts('Between phases 2 and 3', 'of three phases only', true),
  third: volts('Between phases 3 and 1', 'of three phases only', true),
}

/** The supply at the terminals: one voltage, or three between phases. */
export function SupplyForm({ initial, units, keepLabel = 'Enter the supply', record }: Props) {
  const [first, second, third] = initial?.voltages ?? []
  return (
    <BlankForm
      blanks={prefilled(VOLTAGES, { nominal: initial?.nominal, first, second, third })}
      units={units}
      keepLabel={keepLabel}
      keep={async ({ nominal = '', first = '', second, third }) => {
        if ((second === undefined) !== (third === undefined)) {
          const field = second === undefined ? 'Between phases 2 and 3' : 'Between phases 3 and 1'
          const accepted = 'all three voltages, or one alone'
          return fail({ kind: 'problems', problems: [{ kind: 'missing', field, value: 'nothing', accepted }] })
        }
        const voltages = [first, second, third].filter((voltage) => voltage !== undefined)
        return record({ kind: 'supply-measured', voltages, nominal })
      }}
    />
  )
}
