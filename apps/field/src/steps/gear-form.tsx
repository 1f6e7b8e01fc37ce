import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf, LogEntry } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'

interface Props {
  readonly log: readonly LogEntry[]
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** With what the charge is measured out; what was told last stands in the blanks. */
export function GearForm({ log, units, record }: Props) {
  const last = log.findLast(({ holds }) => holds?.kind === 'weighing-gear')?.holds as
    | FactOf<'weighing-gear'>
    | undefined
  const temperature = { accepts: ['temperature'], optional: true } as const
  const length = { accepts: ['length'], optional: true } as const
  return (
    <BlankForm
      blanks={{
        scaleStep: {
          label: 'Smallest step of the scale',
          accepts: ['mass'],
          example: 'for example 0.5 oz or 5 g',
          optional: true,
          initial: last?.scaleStep,
        },
        hoseLength: {
          ...length,
          label: 'Hose, length',
          example: 'for example 60 in or 1.5 m',
          initial: last?.hoseLength,
        },
        hoseInside: {
          ...length,
          label: 'Hose, diameter inside',
          example: 'for example 0.2 in or 5 mm',
          initial: last?.hoseInside,
        },
        cylinderTemperature: {
          ...temperature,
          label: 'Charging cylinder, temperature of its liquid',
          example: 'only if you charge by its level: 85 °F or 29 °C',
          initial: last?.cylinderTemperature,
        },
        graduatedFor: {
          ...temperature,
          label: 'Charging cylinder, temperature of its graduation',
          example: 'as printed on it: 70 °F or 21 °C',
          initial: last?.graduatedFor,
        },
      }}
      units={units}
      keepLabel="Enter the gear"
      keep={(gear) => record({ kind: 'weighing-gear', ...gear })}
    />
  )
}
