import { useId } from 'preact/hooks'
import { t } from '../words/t.ts'

interface Props<Choice extends string> {
  readonly label: string
  readonly choices: Readonly<Record<Choice, string>>
  readonly chosen: Choice | undefined
  readonly choose: (choice: Choice) => void
}

/** A few answers side by side inside a form that is kept as a whole. */
export function Choices<Choice extends string>({ label, choices, chosen, choose }: Props<Choice>) {
  const id = useId()
  return (
    <fieldset class="form-choices" aria-labelledby={id}>
      <span class="form-label" id={id}>
        {t(label)}
      </span>
      <div class="choices">
        {(Object.entries<string>(choices) as [Choice, string][]).map(([choice, words]) => (
          <button
            key={choice}
            type="button"
            class="choice"
            aria-pressed={choice === chosen}
            onClick={() => choose(choice)}
          >
            {t(words)}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
