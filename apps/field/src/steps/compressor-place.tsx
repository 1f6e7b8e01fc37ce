import { StepPlace, type StepProps } from './step-place.tsx'

/** The compressor against its maker's figures, beside the readings of its power. */
export function CompressorPlace(step: StepProps) {
  return (
    <StepPlace
      title="Compressor and supply"
      state={step.visit.system.facts.compressorRating === undefined ? 'no rating entered' : 'rating entered'}
      load={async () => (await import('./compressor-step.tsx')).CompressorStep}
      step={step}
    />
  )
}
