/** Leaves room for the keypad at the foot of the page while it stands there. Returns how to stop it. */
export function makeRoomFor(keypad: HTMLElement): () => void {
  const root = document.documentElement
  const grown = new ResizeObserver(() => root.style.setProperty('--keypad', `${keypad.offsetHeight}px`))
  grown.observe(keypad)
  root.dataset.typing = ''
  return () => {
    grown.disconnect()
    root.style.removeProperty('--keypad')
    delete root.dataset.typing
  }
}

/** Keeps the field and what it says above the keypad, also while it says more or less. Returns how to stop it. */
export function keepInSight(input: HTMLElement, keypad: HTMLElement): () => void {
  const entry = input.closest<HTMLElement>('.entry, .form-entry') ?? input
  const look = () => {
    entry.scrollIntoView({ block: 'nearest' })
    // Of an entry that is taller than the room, the field itself.
    input.scrollIntoView({ block: 'nearest' })
  }
  const grown = new ResizeObserver(look)
  grown.observe(entry)
  grown.observe(keypad)
  return () => grown.disconnect()
}
