/** Steps of a long list that stand open; a fold around the last one alone would save nothing. */
const IN_SIGHT = 3

/** What to do, in order. Of a long list the first steps stand open, so that the act and the readings stay near. */
export function StepList({ steps }: { readonly steps: readonly string[] }) {
  if (steps.length === 0) return null
  const shown = steps.length > IN_SIGHT + 1 ? IN_SIGHT : steps.length
  return (
    <div>
      <Steps label="What to do" steps={steps.slice(0, shown)} from={1} />
      {shown < steps.length && (
        <details class="more-steps">
          <summary>
            Steps {shown + 1} to {steps.length}
          </summary>
          <Steps label="What to do then" steps={steps.slice(shown)} from={shown + 1} />
        </details>
      )}
    </div>
  )
}

interface StepsProps {
  readonly label: string
  readonly steps: readonly string[]
  readonly from: number
}

function Steps({ label, steps, from }: StepsProps) {
  return (
    <ol class="steps" start={from} aria-label={label}>
      {steps.map((step, i) => (
        <li key={step}>
          <b aria-hidden="true">{from + i}.</b>
          <span>{step}</span>
        </li>
      ))}
    </ol>
  )
}
