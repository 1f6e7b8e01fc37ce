import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import type { Photo } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { Choices } from './choices.tsx'
import { scaledPhoto } from './scaled-photo.ts'
import { Trouble } from './trouble.tsx'

interface Props {
  readonly keep: (subject: string, picture: Omit<Photo, 'file'>) => Kept
}

const SUBJECTS = { Nameplate: 'Nameplate', Panel: 'Panel', Other: 'Other' } as const

/** Takes a photo, or picks one, and keeps it scaled down. */
export function PhotoTaker({ keep }: Props) {
  const id = useId()
  const subject = useSignal<keyof typeof SUBJECTS>('Nameplate')
  const words = useSignal('')
  const state = useSignal<'idle' | 'keeping'>('idle')
  const trouble = useSignal<string | undefined>(undefined)
  const take = async (file: File) => {
    state.value = 'keeping'
    const picture = await scaledPhoto(file)
    const named = subject.value === 'Other' ? words.value.trim() || 'Photo' : subject.value
    const kept = picture && (await keep(named, picture))
    state.value = 'idle'
    if (!kept) trouble.value = t('This file could not be read as a picture.')
    else trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
  }
  return (
    <div class="form photo-taker">
      <Choices
        label={t('What it shows')}
        choices={SUBJECTS}
        chosen={subject.value}
        choose={(to) => {
          subject.value = to
        }}
      />
      {subject.value === 'Other' && (
        <input
          class="form-blank"
          aria-label={t('What it shows, in words')}
          placeholder={t('for example: oil stain at the flare')}
          maxLength={200}
          value={words.value}
          onInput={(event) => {
            words.value = event.currentTarget.value
          }}
        />
      )}
      <div class="file-picker">
        <input
          id={id}
          type="file"
          accept="image/*"
          capture="environment"
          disabled={state.value === 'keeping'}
          onChange={async (event) => {
            const picker = event.currentTarget
            const [file] = picker.files ?? []
            if (file) await take(file)
            picker.value = ''
          }}
        />
        <label class="key" for={id}>
          {state.value === 'keeping' ? t('Keeping the photo …') : t('Take a photo')}
        </label>
      </div>
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
    </div>
  )
}
