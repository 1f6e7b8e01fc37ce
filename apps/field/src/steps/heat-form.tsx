import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { t } from '../words/t.ts'
import type { AirflowFormProps } from './airflow-step.tsx'
import { BlankForm } from './blank-form.tsx'

const PHASES = { single: 'single phase', three: 'three phases' } as const

/** All that an electric heater takes goes into the air: volts, amps and the rise of the air across it. */
export function HeatForm({ units, find }: AirflowFormProps) {
  const phases = useSignal<keyof typeof PHASES>('single')
  return (
    <BlankForm
      blanks={{
        volts: { label: 'Volts at the heater', accepts: ['voltage'], example: 'between lines, while it runs: 240 V' },
        amps: { label: 'Amps in one line', accepts: ['current'], example: 'for example 41 A' },
        rise: {
          label: 'Rise of the air',
          accepts: ['temperature difference'],
          example: 'supply less return: 21 °F',
        },
        blower: {
          label: 'Blower, if the amps do not include it',
          accepts: ['power'],
          example: 'for example 450 W',
          optional: true,
        },
      }}
      units={units}
      keepLabel="Work the airflow out and enter it"
      keep={({ volts = '', amps = '', rise = '', blower }) =>
        find(
          {
            kind: 'electric-heat',
            volts,
            amps,
            rise,
            phases: phases.value === 'three' ? 3 : 1,
            ...(blower !== undefined && { blower }),
          },
          t('{0}, {1}, rise {2}, {3}', volts, amps, rise, t(PHASES[phases.value])),
        )
      }
    >
      <p class="hint">
        {t(
          'Compressor off, heat on, until the rise stands still. Read the supply out of sight of the heater. Work at live terminals only if you may.',
        )}
      </p>
      <Choices label={t('The heater is')} choices={PHASES} chosen={phases.value} choose={(to) => (phases.value = to)} />
    </BlankForm>
  )
}
