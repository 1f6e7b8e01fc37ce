import { useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept, Session } from '../session/session.ts'
import { t } from '../words/t.ts'
import { dayInWords } from './time-in-words.ts'
import { Trouble } from './trouble.tsx'

interface Props {
  readonly subject: string
  readonly at: string
  readonly file: string
  readonly photo: Session['photo']
  readonly takeAway: () => Kept
}

type Found = { readonly kind: 'looking' | 'not-here' } | { readonly kind: 'here'; readonly address: string }

/** One photo with what it shows. One that came without its file says so. */
export function PhotoFigure({ subject, at, file, photo, takeAway }: Props) {
  const found = useSignal<Found>({ kind: 'looking' })
  const trouble = useSignal<string | undefined>(undefined)
  useEffect(() => {
    let address: string | undefined
    let isGone = false
    void photo(file).then((kept) => {
      if (isGone) return
      if (kept) address = URL.createObjectURL(new Blob([kept.bytes], { type: kept.type }))
      found.value = address === undefined ? { kind: 'not-here' } : { kind: 'here', address }
    })
    return () => {
      isGone = true
      if (address !== undefined) URL.revokeObjectURL(address)
    }
  }, [file])
  const remove = async () => {
    const kept = await takeAway()
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
  }
  return (
    <figure class="photo">
      {found.value.kind === 'here' && (
        <a
          href={found.value.address}
          target="_blank"
          rel="noreferrer"
          aria-label={t('Open the photo: {0}', t(subject))}
        >
          <img src={found.value.address} alt={t(subject)} />
        </a>
      )}
      {found.value.kind === 'not-here' && <p class="hint">{t('The file of this photo is not on this device.')}</p>}
      <figcaption>
        <strong>{t(subject)}</strong>
        <span class="hint">{dayInWords(at)}</span>
      </figcaption>
      <button type="button" class="link" aria-label={t('Take away: {0}', t(subject))} onClick={() => void remove()}>
        {t('Take away')}
      </button>
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
    </figure>
  )
}
