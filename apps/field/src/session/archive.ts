import { fail, ok, type Result } from '@chargewright/quantity'
import { readArchiveFile } from '@chargewright/visit'
import { computed, type ReadonlySignal, signal } from '@preact/signals'
import type { ExportMarks } from '../store/export-marks.ts'
import type { Photo, Shelf, StoredVisit, VisitStore } from '../store/visit-store.ts'
import type { Merge } from './archive-in.ts'
import type { SavedFile } from './saved-file.ts'
import type { NotKept, Session } from './session.ts'
import type { SettingsShelf } from './settings-shelf.ts'

/** The way of everything on this device into one file and back. */
export interface Archive {
  /** Entries that no export holds yet; those of the invented systems do not count. */
  readonly notExported: ReadonlySignal<number>
  readonly save: () => Promise<Result<SavedFile, NotKept>>
  /** The file has been handed over: what it held counts as exported. */
  readonly saved: () => Promise<void>
  /** A visit by itself has been handed over. */
  readonly visitSaved: (visit: Pick<StoredVisit, 'id' | 'events'>) => Promise<void>
  readonly takeIn: (json: string) => Promise<Result<TakenInArchive, NotKept>>
}

export interface TakenInArchive extends Omit<Merge, 'changes'> {
  readonly settings: number
}

interface Surroundings {
  readonly store: VisitStore
  readonly marks: ExportMarks
  readonly settings: SettingsShelf
  readonly session: Pick<Session, 'systems' | 'visits'>
  readonly head: () => { readonly id: string; readonly at: string }
}

/** Whether a text is an archive, by its first words; what else it is wrong with is told by reading it. */
export const isArchive = (json: string): boolean => /"format"\s*:\s*"chargewright-archive"/.test(json.slice(0, 500))

export async function createArchive({ store, marks, settings, session, head }: Surroundings): Promise<Archive> {
  const exported = signal(await marks.read())
  let handedOver: ReadonlyMap<string, number> = new Map()

  return {
    notExported: computed(() => {
      const logs = [...(session.systems.value ?? []), ...(session.visits.value ?? [])]
      return logs
        .filter(({ origin }) => origin !== 'demo')
        .reduce((sum, { id, events }) => sum + Math.max(0, events.length - (exported.value.get(id) ?? 0)), 0)
    }),
    save: async () => {
      const [shelf, files] = await Promise.all([store.all(), store.photoFiles()])
      if (!shelf.ok) return fail({ kind: 'store', problem: shelf.error })
      if (!files.ok) return fail({ kind: 'store', problem: files.error })
      const photos: Photo[] = []
      for (const file of files.value) {
        const photo = await store.photo(file)
        if (!photo.ok) return fail({ kind: 'store', problem: photo.error })
        if (photo.value) photos.push(photo.value)
      }
      const { archiveOf } = await import('./archive-of.ts')
      handedOver = countsOf(shelf.value)
      return ok(archiveOf(shelf.value, photos, settings.all(), head().at.slice(0, 10)))
    },
    saved: async () => {
      exported.value = handedOver
      await marks.write(handedOver)
    },
    visitSaved: async ({ id, events }) => {
      exported.value = new Map([...exported.value, [id, events.length]])
      await marks.write(exported.value)
    },
    takeIn: async (json) => {
      const archive = readArchiveFile(json)
      if (!archive.ok) return fail({ kind: 'problems', problems: archive.error })
      const [shelf, files] = await Promise.all([store.all(), store.photoFiles()])
      if (!shelf.ok) return fail({ kind: 'store', problem: shelf.error })
      if (!files.ok) return fail({ kind: 'store', problem: files.error })
      // Seldom needed, like the way out, and so no part of what the first page loads.
      const { archiveIn } = await import('./archive-in.ts')
      const merge = archiveIn(archive.value, shelf.value, files.value, head)
      if (!merge.ok) return fail({ kind: 'problems', problems: merge.error })
      const { changes, ...did } = merge.value
      const kept = await store.write(changes)
      if (!kept.ok) return fail({ kind: 'store', problem: kept.error })
      return ok({ ...did, settings: settings.addMissing(archive.value.preferences) })
    },
  }
}

const countsOf = ({ systems, visits }: Shelf) =>
  new Map([...systems, ...visits].map(({ id, events }) => [id, events.length]))
