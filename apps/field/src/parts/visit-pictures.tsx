import type { Assessment } from '@chargewright/charging'
import {
  chargingChart,
  convergenceChart,
  DESK,
  PAGE,
  PHONE,
  plateOfVisit,
  type Sheet,
  stepsChart,
  subcoolingChart,
} from '@chargewright/picture'
import type { UnitPreference } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { useMemo } from 'preact/hooks'
import { PictureFigure } from './picture-figure.tsx'

export interface VisitPicturesProps {
  readonly visit: Visit
  readonly assessment: Assessment
  readonly units: UnitPreference
  /** Whether there is room for the large sheet. */
  readonly wide: boolean
}

const DRAWINGS = [chargingChart, subcoolingChart, stepsChart, convergenceChart, plateOfVisit] as const

/** What can be drawn of the visit so far: its method against its target, its steps, its cycle. */
export function VisitPictures({ visit, assessment, units, wide }: VisitPicturesProps) {
  const pictures = useMemo(() => {
    const sheet: Sheet = { ...(wide ? DESK : PHONE), palette: PAGE }
    return DRAWINGS.flatMap((drawing) => drawing(visit, assessment, units, sheet) ?? [])
  }, [visit, assessment, units, wide])
  if (pictures.length === 0) return null
  return (
    <section class="pictures" aria-labelledby="pictures">
      <h2 id="pictures">Drawn from the readings</h2>
      {pictures.map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </section>
  )
}
