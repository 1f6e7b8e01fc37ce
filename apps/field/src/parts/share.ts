import type { SavedFile } from '../session/saved-file.ts'
import { download } from './download.ts'

/** Whether this browser hands files to other apps: to mail, to messages, to a printer. */
export function canShare(): boolean {
  const probe = new File([''], 'record.pdf', { type: 'application/pdf' })
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [probe] })
}

/** Opens the share sheet of the device. Where it does not open, the file is saved; closing it keeps nothing. */
export async function share(file: SavedFile): Promise<void> {
  const { name, type, content } = file
  try {
    await navigator.share({ files: [new File([content], name, { type })], title: name })
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return
    download(file)
  }
}
