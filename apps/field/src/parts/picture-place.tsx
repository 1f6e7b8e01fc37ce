import type { UnitPreference } from '@chargewright/quantity'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import type { VisitEvents } from '../worker/protocol.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { PictureFigure } from './picture-figure.tsx'
import { useWide } from './use-wide.ts'

interface Props {
  readonly visit: VisitEvents
  readonly units: UnitPreference
}

/** What can be drawn of the visit so far: its method against its target, its steps, its cycle. */
export function PicturePlace({ visit, units }: Props) {
  // Where they cannot be drawn the page is whole all the same: each figure of theirs stands in the finding, too.
  const { answer: pictures = [] } = useAnswer('draw', visit, units, useWide() ? 'desk' : 'phone', spoken.value)
  if (pictures.length === 0) return null
  return (
    <section class="pictures" aria-labelledby="pictures">
      <h2 id="pictures">{t('Drawn from the readings')}</h2>
      {pictures.map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </section>
  )
}
