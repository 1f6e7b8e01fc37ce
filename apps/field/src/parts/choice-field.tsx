import { useSignal } from '@preact/signals'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { EntryMessage } from './entry-message.tsx'

interface Props<Choice extends string> {
  readonly id: string
  readonly label: string
  readonly choices: Readonly<Record<Choice, string>>
  readonly chosen: string | undefined
  /** The answer is from before the last change to the system: the same one can be given again. */
  readonly outdated?: string | undefined
  readonly absent: string
  readonly choose: (choice: Choice) => Kept
}

/**
 * A few answers side by side, one of which holds. Buttons and not radio buttons, because arrow keys that walk over
 * radio buttons would enter every answer they pass.
 */
export function ChoiceField<Choice extends string>({
  id,
  label,
  choices,
  chosen,
  outdated,
  absent,
  choose,
}: Props<Choice>) {
  const trouble = useSignal<string | undefined>(undefined)
  const answers = Object.entries<string>(choices) as [Choice, string][]
  const anchor = answers.find(([choice]) => choice === chosen)?.[0] ?? answers[0]?.[0]
  const press = async (choice: Choice) => {
    if (choice === chosen && !outdated) return
    const kept = await choose(choice)
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, label)
  }
  return (
    <fieldset
      class="entry"
      data-kept={chosen !== undefined}
      aria-labelledby={`${id}-label`}
      aria-describedby={`${id}-says`}
    >
      <span class="entry-label" id={`${id}-label`}>
        {t(label)}
      </span>
      <div class="choices">
        {answers.map(([choice, words]) => (
          <button
            key={choice}
            type="button"
            class="choice"
            {...(choice === anchor && { id, 'data-entry': true })}
            aria-pressed={choice === chosen}
            onClick={() => void press(choice)}
          >
            {t(words)}
          </button>
        ))}
      </div>
      <div class="entry-says" id={`${id}-says`}>
        <EntryMessage trouble={trouble.value} outdated={outdated} absent={chosen === undefined ? absent : undefined} />
      </div>
    </fieldset>
  )
}
