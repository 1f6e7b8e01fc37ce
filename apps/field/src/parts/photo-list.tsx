import type { ShownPhoto } from '../session/photos-of.ts'
import type { Session } from '../session/session.ts'
import { t } from '../words/t.ts'
import { PhotoFigure } from './photo-figure.tsx'
import { PhotoTaker } from './photo-taker.tsx'

interface Props {
  readonly photos: readonly ShownPhoto[]
  /** The log that a new photo goes into. */
  readonly into: string
  readonly session: Session
}

/** Photos of the nameplate, the panel, whatever a word is too short for. */
export function PhotoList({ photos, into, session }: Props) {
  return (
    <section class="photos" aria-labelledby="photos">
      <h2 id="photos">{t('Photos')}</h2>
      {photos.length === 0 && (
        <p class="hint">
          {t('None yet. The nameplate and the wiring diagram on the panel save the next visit a climb.')}
        </p>
      )}
      <ul class="photo-grid">
        {photos.map(({ eventId, log, subject, file, at }) => (
          <li key={eventId}>
            <PhotoFigure
              subject={subject}
              at={at}
              file={file}
              photo={session.photo}
              takeAway={() => session.correct(log, eventId, undefined)}
            />
          </li>
        ))}
      </ul>
      <PhotoTaker keep={(subject, picture) => session.recordPhoto(into, subject, picture)} />
    </section>
  )
}
