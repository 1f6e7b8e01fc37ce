interface Props {
  readonly label: string
  readonly steps: readonly string[]
  readonly from: number
}

/** Steps in order, numbered from one on. */
export function Steps({ label, steps, from }: Props) {
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
