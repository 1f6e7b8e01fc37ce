import { useId } from 'preact/hooks'

interface Props {
  readonly label: string
  readonly example: string
  readonly asked: string
  readonly ask: (asked: string) => void
}

/** A blank to search by; the list below it follows every key. */
export function SearchField({ label, example, asked, ask }: Props) {
  const id = useId()
  return (
    <div class="search">
      <label class="form-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="form-blank"
        type="search"
        autoComplete="off"
        spellcheck={false}
        placeholder={example}
        value={asked}
        onInput={(event) => ask(event.currentTarget.value)}
      />
    </div>
  )
}
