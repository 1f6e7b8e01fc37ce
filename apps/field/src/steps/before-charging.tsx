import type { Visit } from '@chargewright/visit'
import { BEFORE_CHARGING } from '../parts/reveal.ts'
import { t } from '../words/t.ts'
import { StepPlace, type StepProps } from './step-place.tsx'

/** What comes before refrigerant goes in: tight, dry, and a cylinder that is known. */
export function BeforeCharging(step: StepProps) {
  const { pressureTests, vacuumTests, cylinders } = step.visit
  return (
    <section class="before-charging" aria-labelledby={BEFORE_CHARGING}>
      <h2 id={BEFORE_CHARGING} tabIndex={-1}>
        {t('Opened or empty: tight, dry, weighed')}
      </h2>
      <StepPlace
        title={t('Pressure test')}
        state={stateOf(pressureTests.at(-1)?.readings.length)}
        load={async () => (await import('./pressure-test-step.tsx')).PressureTestStep}
        step={step}
      />
      <StepPlace
        title={t('Evacuation')}
        state={vacuumTests.at(-1)?.log ? t('log entered') : stateOf(vacuumTests.at(-1)?.readings.length)}
        load={async () => (await import('./evacuation-step.tsx')).EvacuationStep}
        step={step}
      />
      <StepPlace
        title={t('Cylinders')}
        state={cylinderState(cylinders)}
        load={async () => (await import('./cylinder-step.tsx')).CylinderStep}
        step={step}
      />
      <StepPlace
        title={t('Weigh-in')}
        state={step.visit.system.figures.nameplateCharge ? t('nameplate charge known') : t('nameplate charge missing')}
        load={async () => (await import('./weigh-in-step.tsx')).WeighInStep}
        step={step}
      />
    </section>
  )
}

function stateOf(readings: number | undefined): string {
  if (readings === undefined) return t('not begun')
  return readings === 1 ? t('1 reading') : t('{0} readings', readings)
}

function cylinderState({ length }: Visit['cylinders']): string {
  if (length === 0) return t('none weighed')
  return length === 1 ? t('1 weighed') : t('{0} weighed', length)
}
