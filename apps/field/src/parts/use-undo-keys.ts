import { useEffect } from 'preact/hooks'

/** Undo and redo by the usual keys of a desk; inside a blank they are left to its own text. */
export function useUndoKeys(undo: () => void, redo: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const isBlank = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement
      if (isBlank || event.altKey || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return
      event.preventDefault()
      if (event.shiftKey) redo()
      else undo()
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  })
}
