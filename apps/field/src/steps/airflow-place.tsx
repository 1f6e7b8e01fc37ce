import { t } from '../words/t.ts'
import { StepPlace, type StepProps } from './step-place.tsx'

/** The way to an airflow where none was read, beside the readings of the evaporator. */
export function AirflowPlace(step: StepProps) {
  return (
    <StepPlace
      title={t('Find the airflow')}
      state={step.visit.readings.airflow ? t('read') : t('not read')}
      load={async () => (await import('./airflow-step.tsx')).AirflowStep}
      step={step}
    />
  )
}
