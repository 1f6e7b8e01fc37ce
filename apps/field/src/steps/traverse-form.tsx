import { ok, preferredUnit } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { Choices } from '../parts/choices.tsx'
import { t } from '../words/t.ts'
import type { AirflowFormProps } from './airflow-step.tsx'
import { BlankForm } from './blank-form.tsx'
import { pointsInWords } from './points-in-words.ts'

const DUCTS = { rectangular: 'rectangular', round: 'round' } as const
const length = (label: string, example: string) => ({ label, accepts: ['length'], example }) as const

/** A reading at every point of a duct. The size tells first where the probe is held. */
export function TraverseForm({ units, find }: AirflowFormProps) {
  const id = useId()
  const shape = useSignal<keyof typeof DUCTS>('rectangular')
  const points = useSignal<string | undefined>(undefined)
  const readings = useSignal('')
  const isRound = shape.value === 'round'
  const ducts = { ...units, length: units.length === 'm' ? 'mm' : 'in' }
  const size = isRound
    ? { diameter: length('Diameter inside', 'for example 14 in or 350 mm') }
    : {
        width: length('Width inside', 'for example 20 in or 500 mm'),
        height: length('Height inside', 'for example 12 in or 300 mm'),
      }
  const unit = preferredUnit('velocity', units).symbol
  return (
    <BlankForm<'width' | 'height' | 'diameter'>
      key={shape.value}
      blanks={size as Parameters<typeof BlankForm<'width' | 'height' | 'diameter'>>[0]['blanks']}
      units={ducts}
      stays={readings.value.trim() === ''}
      keepLabel={readings.value.trim() === '' ? 'Tell where to hold the probe' : 'Work the airflow out and enter it'}
      keep={async ({ width = '', height = '', diameter = '' }) => {
        const numbers = readings.value.split(/[\s;]+/).filter((each) => each !== '')
        if (numbers.length === 0) {
          points.value = pointsInWords(isRound ? { diameter } : { width, height }, ducts)
          return ok(undefined)
        }
        const duct = isRound ? { diameter } : { width, height }
        const sized = isRound ? t('{0} duct', diameter) : t('{0} by {1} duct', width, height)
        return find(
          { kind: 'traverse', duct, readings: numbers.map((each) => `${each} ${unit}`) },
          t('{0} points, {1}', numbers.length, sized),
        )
      }}
    >
      <Choices label={t('The duct is')} choices={DUCTS} chosen={shape.value} choose={(to) => (shape.value = to)} />
      {points.value !== undefined && <p role="status">{points.value}</p>}
      <label class="form-label" for={id}>
        {t('Velocities, one at each point, in {0}', unit)}
      </label>
      <textarea
        id={id}
        rows={4}
        placeholder={t('bare numbers, set apart by a space or a line')}
        value={readings.value}
        onInput={(event) => {
          readings.value = event.currentTarget.value
        }}
      />
    </BlankForm>
  )
}
