import type { TakenInArchive } from './archive.ts'

/** What taking an archive in did, a line for each sort of thing that changed. */
export function archiveInWords({ systems, visits, photos, settings }: TakenInArchive): string {
  const lines = [
    systems.new > 0 && `Systems added: ${systems.new}.`,
    visits.new > 0 && `Visits added: ${visits.new}.`,
    systems.longer + visits.longer > 0 && `Gone on with the entries that were new: ${systems.longer + visits.longer}.`,
    visits.parted > 0 && `Visits kept beside ours, because their entries differ: ${visits.parted}.`,
    photos > 0 && `Photos added: ${photos}.`,
    settings > 0 && `Settings added, used from the next start on: ${settings}.`,
  ].filter((line) => line !== false)
  if (lines.length === 0) return 'Everything in this file is here already. Nothing has changed.'
  return `The file was taken in; nothing that was here has changed.\n${lines.join('\n')}`
}
