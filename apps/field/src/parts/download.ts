import type { SavedFile } from '../session/saved-file.ts'

/** Hands a file to the browser to be saved. */
export function download({ name, type, content }: SavedFile): void {
  const address = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
