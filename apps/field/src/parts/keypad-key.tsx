import type { ComponentChildren } from 'preact'

interface Props {
  /** Where on the keypad it stands. */
  readonly place: string
  readonly name?: string
  readonly disabled?: boolean
  readonly press: () => void
  readonly children: ComponentChildren
}

/** One key. It is no stop of the Tab key: with a real keyboard the number and its unit are typed. */
export function KeypadKey({ place, name, disabled = false, press, children }: Props) {
  return (
    <button
      type="button"
      tabIndex={-1}
      class="keypad-key"
      data-place={place}
      disabled={disabled}
      aria-label={name}
      onClick={press}
    >
      {children}
    </button>
  )
}
