import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'

interface Props {
  /** What was told last, or is to be corrected. */
  readonly initial: FactOf<'weighing-gear'> | undefined
  readonly units: UnitPreference
  readonly keepLabel?: string
  readonly record: (fact: Fact) => Kept
}

/** With what the charge is measured out. */
export function GearForm({ initial, units, keepLabel = 'Enter the gear', record }: Props) {
  return (
    <BlankForm
      blanks={prefilled(GEAR, initial)}
      units={units}
      keepLabel={keepLabel}
      keep={(gear) => record({ kind: 'weighing-gear', ...gear })}
    />
  )
}

const temperature = { accepts: ['temperature'], optional: true } as const
const length = { accepts: ['length'], optional: true } as const
const GEAR = {
  scaleStep: {
    label: 'Smallest step of the scale',
    accepts: ['mass'],
    example: 'for example 0.5 oz or 5 g',
    optional: true,
  },
  hoseLength: { ...length, label: 'Hose, length', example: 'for example 60 in or 1.5 m' },
  hoseInside: { ...length, label: 'Hose, diameter inside', example: 'for example 0.2 in or 5 mm' },
  cylinderTemperature: {
    ...temperature,
    label: 'Charging cylinder, temperature of its liquid',
    example: 'only if you charge by its level: 85 °F or 29 °C',
  },
  graduatedFor: {
    ...temperature,
    label: 'Charging cylinder, temperature of its graduation',
    example: 'as printed on it: 70 °F or 21 °C',
  },
} as const
