import type { ReadonlySignal } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useId } from 'preact/hooks'

interface Props {
  readonly label: string
  readonly example: string
  readonly text: ReadonlySignal<string>
  readonly type: (text: string) => void
  readonly suggestions?: readonly string[] | undefined
  /** What is below follows every key. */
  readonly isSearch?: boolean
  /** What was understood, under it. */
  readonly children?: ComponentChildren
}

/** A blank of a form that is kept as a whole, or one to search by. */
export function FormBlank({ label, example, text, type, suggestions, isSearch = false, children }: Props) {
  const id = useId()
  return (
    <div class={isSearch ? 'search' : 'form-line'}>
      <label class="form-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="form-blank"
        type={isSearch ? 'search' : 'text'}
        autoComplete="off"
        spellcheck={false}
        placeholder={example}
        maxLength={200}
        list={suggestions && `${id}-suggestions`}
        value={text.value}
        onInput={(event) => type(event.currentTarget.value)}
      />
      {suggestions && (
        <datalist id={`${id}-suggestions`}>
          {suggestions.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      {children}
    </div>
  )
}
