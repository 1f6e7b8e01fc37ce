import { t } from '../words/t.ts'
import { StepPlace, type StepProps } from './step-place.tsx'

/** The compressor against its maker's figures, beside the readings of its power. */
export function CompressorPlace(step: StepProps) {
  return (
    <StepPlace
      title={t('Compressor and supply')}
      state={step.visit.system.facts.compressorRating === undefined ? t('no rating entered') : t('rating entered')}
      load={async () => (await import('./compressor-step.tsx')).CompressorStep}
      step={step}
    />
  )
}
