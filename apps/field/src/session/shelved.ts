import { type ReadonlySignal, signal } from '@preact/signals'

/** The part of the browser's own store that is needed. It may refuse, even to be named; that costs the preference. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>

/** A value that survives a restart, where the browser keeps anything at all. */
export function shelved<T>(
  shelf: () => Shelf,
  key: string,
  read: (kept: unknown) => T,
): { readonly value: ReadonlySignal<T>; readonly set: (to: T) => void } {
  const value = signal(read(taken(shelf, key)))
  const set = (to: T) => {
    value.value = to
    try {
      shelf().setItem(key, typeof to === 'string' ? to : JSON.stringify(to))
    } catch {
      // Shown all the same; it will have to be chosen again next time.
    }
  }
  return { value, set }
}

/** What lies there: data, or a plain word. */
function taken(shelf: () => Shelf, key: string): unknown {
  try {
    const text = shelf().getItem(key) ?? ''
    return text.startsWith('{') ? JSON.parse(text) : text
  } catch {
    return undefined
  }
}
