/** Keeps the field and what it says above the keypad, also while it says more or less. Returns how to stop it. */
export function keepInSight(input: HTMLElement, keypad: HTMLElement): () => void {
  const entry = input.closest<HTMLElement>('.entry, .form-entry') ?? input
  const root = document.documentElement
  const look = () => {
    root.style.setProperty('--keypad', `${keypad.offsetHeight}px`)
    entry.scrollIntoView({ block: 'nearest' })
    // Of an entry that is taller than the room, the field itself.
    input.scrollIntoView({ block: 'nearest' })
  }
  const grown = new ResizeObserver(look)
  grown.observe(entry)
  grown.observe(keypad)
  root.dataset.typing = ''
  return () => {
    grown.disconnect()
    root.style.removeProperty('--keypad')
    delete root.dataset.typing
  }
}
