import { t } from '../words/t.ts'
import type { TakenInArchive } from './archive.ts'

/** What taking an archive in did, a line for each sort of thing that changed. */
export function archiveInWords({ systems, visits, photos, settings }: TakenInArchive): string {
  const lines = [
    systems.new > 0 && t('Systems added: {0}.', systems.new),
    visits.new > 0 && t('Visits added: {0}.', visits.new),
    systems.longer + visits.longer > 0 &&
      t('Gone on with the entries that were new: {0}.', systems.longer + visits.longer),
    visits.parted > 0 && t('Visits kept beside ours, because their entries differ: {0}.', visits.parted),
    photos > 0 && t('Photos added: {0}.', photos),
    settings > 0 && t('Settings added, used from the next start on: {0}.', settings),
  ].filter((line) => line !== false)
  if (lines.length === 0) return t('Everything in this file is here already. Nothing has changed.')
  return [t('The file was taken in; nothing that was here has changed.'), ...lines].join('\n')
}
