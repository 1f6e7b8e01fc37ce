import { useSignal } from '@preact/signals'
import { type Archive, isArchive } from '../session/archive.ts'
import { archiveInWords } from '../session/archive-in-words.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Session, TakenIn } from '../session/session.ts'
import { t } from '../words/t.ts'
import { download } from './download.ts'
import { FilePicker } from './file-picker.tsx'

interface Props {
  readonly session: Session
  readonly archive: Archive
}

interface Message {
  readonly trouble: boolean
  readonly text: string
}

/** Everything as one file out, and any file of ours in. */
export function ExchangePlace({ session, archive }: Props) {
  const message = useSignal<Message | undefined>(undefined)
  const saving = useSignal(false)
  const count = archive.notExported.value
  const hasOwn = session.systems.value?.some(({ origin }) => origin !== 'demo')
  const save = async () => {
    if (saving.value) return
    saving.value = true
    const file = await archive.save()
    saving.value = false
    if (!file.ok) {
      message.value = { trouble: true, text: notKeptInWords(file.error) }
      return
    }
    download(file.value)
    await archive.saved()
    message.value = { trouble: false, text: t('Everything is in {0}. Keep it on another device.', file.value.name) }
  }
  const takeIn = async (json: string) => {
    const refused = (error: Parameters<typeof notKeptInWords>[0]): Message => {
      return {
        trouble: true,
        text: `${t('The file was not taken in, and nothing here has changed.')}\n${notKeptInWords(error)}`,
      }
    }
    message.value = { trouble: false, text: t('Reading the file …') }
    if (isArchive(json)) {
      const taken = await archive.takeIn(json)
      message.value = taken.ok ? { trouble: false, text: archiveInWords(taken.value) } : refused(taken.error)
    } else {
      const taken = await session.takeIn(json)
      message.value = taken.ok ? { trouble: false, text: t(ARRIVED[taken.value.arrival]) } : refused(taken.error)
    }
  }
  return (
    <>
      {hasOwn && (
        <p class="not-exported">
          {count === 0 ? t('Everything entered here is in an export.') : t('{0} entries are in no export yet.', count)}
        </p>
      )}
      <div class="exchange-keys">
        <button type="button" class="key" aria-disabled={saving.value} onClick={() => void save()}>
          {saving.value ? t('Writing the file …') : t('Export everything')}
        </button>
        <FilePicker label={t('Take in a file')} take={takeIn} />
      </div>
      {message.value && (
        <p class={message.value.trouble ? 'trouble' : 'notice'} role={message.value.trouble ? 'alert' : 'status'}>
          {message.value.text}
        </p>
      )}
    </>
  )
}

const ARRIVED: Readonly<Record<TakenIn['arrival'], string>> = {
  new: 'The visit was taken in.',
  known: 'This visit is here already; the file brings nothing new.',
  longer: 'The visit was here already; the entries that were new have been added.',
  parted: 'This visit is here already with other entries. The file was taken in as a second visit, beside it.',
}
