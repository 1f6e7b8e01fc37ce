import { StepPlace, type StepProps } from './step-place.tsx'

/** The way to an airflow where none was read, beside the readings of the evaporator. */
export function AirflowPlace(step: StepProps) {
  return (
    <StepPlace
      title="Find the airflow"
      state={step.visit.readings.airflow ? 'read' : 'not read'}
      load={async () => (await import('./airflow-step.tsx')).AirflowStep}
      step={step}
    />
  )
}
