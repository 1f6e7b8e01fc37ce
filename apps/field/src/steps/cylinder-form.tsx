import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { HOLDS, REFILLABLE } from '../session/fact-in-words.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'

interface Props {
  /** Of the system: most cylinders hold the same. */
  readonly refrigerant?: string | undefined
  readonly initial?: FactOf<'cylinder-weighed'>
  readonly keepLabel?: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

const mass = (label: string, example: string) => ({ label, accepts: ['mass'], example }) as const

const CYLINDER = {
  cylinder: { label: 'Its mark', accepts: [], example: 'what stands on it, for example C4' },
  refrigerant: { label: 'Refrigerant in it', accepts: [], example: 'as on its label' },
  tare: mass('Tare, stamped TW', 'the empty cylinder: 27 lb or 12.2 kg'),
  waterCapacity: mass('Water capacity, stamped WC', 'for example 47.7 lb or 21.6 kg'),
  gross: mass('The whole cylinder on the scale', 'before it is opened: 50 lb 3 oz or 22.8 kg'),
} as const

/** A cylinder by its stamps, and its weight before it is opened. */
export function CylinderForm({ refrigerant, initial, units, keepLabel = 'Enter the cylinder', record }: Props) {
  const holds = useSignal<keyof typeof HOLDS>(initial?.holds ?? 'new')
  const refillable = useSignal<keyof typeof REFILLABLE>(initial?.refillable ? 'yes' : 'no')
  return (
    <BlankForm
      blanks={prefilled(CYLINDER, initial ?? { refrigerant })}
      units={units}
      keepLabel={keepLabel}
      keep={({ cylinder = '', refrigerant: inIt = '', tare = '', waterCapacity = '', gross = '' }) =>
        record({
          kind: 'cylinder-weighed',
          cylinder,
          refrigerant: inIt,
          holds: holds.value,
          refillable: refillable.value === 'yes',
          tare,
          waterCapacity,
          gross,
        })
      }
    >
      <Choices
        label={t('It holds refrigerant that is')}
        choices={HOLDS}
        chosen={holds.value}
        choose={(to) => (holds.value = to)}
      />
      <Choices
        label={t('The cylinder is')}
        choices={REFILLABLE}
        chosen={refillable.value}
        choose={(to) => (refillable.value = to)}
      />
    </BlankForm>
  )
}
