import { useSignal } from '@preact/signals'
import { useId, useRef } from 'preact/hooks'
import { t } from '../words/t.ts'

interface Props {
  readonly takeText: (name: string, text: string) => void
  /** Absent where the browser has no radio. */
  readonly connect: (() => Promise<void>) | undefined
}

/** The ways in: a file of a logger, the clipboard, a sensor. */
export function SourceKeys({ takeText, connect }: Props) {
  const file = useId()
  const paste = useId()
  const isPasting = useSignal(false)
  const isConnecting = useSignal(false)
  const blank = useRef<HTMLTextAreaElement>(null)
  const fromClipboard = async () => {
    try {
      const text = await navigator.clipboard.readText()
      if (text.trim() !== '') return takeText(t('Pasted'), text)
    } catch {
      // Not allowed, or not there: it is pasted by hand.
    }
    isPasting.value = true
    requestAnimationFrame(() => blank.current?.focus())
  }
  return (
    <>
      <div class="source-keys">
        <div class="file-picker">
          <input
            id={file}
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={async (event) => {
              const picker = event.currentTarget
              const [picked] = picker.files ?? []
              if (picked) takeText(picked.name, await picked.text())
              picker.value = ''
            }}
          />
          <label class="key" for={file}>
            {t('Logger file')}
          </label>
        </div>
        <button type="button" class="key" onClick={() => void fromClipboard()}>
          {t('Paste')}
        </button>
        {connect && (
          <button
            type="button"
            class="key"
            aria-disabled={isConnecting.value}
            onClick={async () => {
              if (isConnecting.value) return
              isConnecting.value = true
              await connect()
              isConnecting.value = false
            }}
          >
            {t('Connect a sensor')}
          </button>
        )}
      </div>
      {isPasting.value && (
        <div class="form">
          <label class="form-label" for={paste}>
            {t('Paste the table here')}
          </label>
          <textarea
            id={paste}
            ref={blank}
            rows={3}
            spellcheck={false}
            onInput={(event) => {
              const text = event.currentTarget.value
              if (text.trim() === '') return
              isPasting.value = false
              takeText(t('Pasted'), text)
            }}
          />
        </div>
      )}
      <p class="hint">
        {t(
          'Any table of numbers with a line of names on top: what a logger wrote, or cells copied from a spreadsheet.',
        )}{' '}
        {connect
          ? t('Sensors are those with the standard environmental service of Bluetooth.')
          : t('This browser connects no sensors.')}
      </p>
    </>
  )
}
