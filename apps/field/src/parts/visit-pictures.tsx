import type { Assessment } from '@chargewright/charging'
import {
  chargingChart,
  DESK,
  PAGE,
  PHONE,
  type Picture,
  plateOfVisit,
  type Sheet,
  stepsChart,
  subcoolingChart,
} from '@chargewright/picture'
import type { UnitPreference } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { useMemo } from 'preact/hooks'

export interface VisitPicturesProps {
  readonly visit: Visit
  readonly assessment: Assessment
  readonly units: UnitPreference
  /** Whether there is room for the large sheet. */
  readonly wide: boolean
}

const DRAWINGS = [chargingChart, subcoolingChart, stepsChart, plateOfVisit] as const

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

function PictureFigure({ picture: { svg, title, table } }: { readonly picture: Picture }) {
  const { head, rows } = table
  return (
    <figure class="picture">
      <figcaption>
        <h3>{title}</h3>
      </figcaption>
      {/* The package writes the element itself and escapes every word in it. */}
      <div class="picture-drawing" dangerouslySetInnerHTML={{ __html: svg }} />
      <details class="fold">
        <summary>The same in figures</summary>
        <div class="picture-table">
          <table>
            <thead>
              <tr>
                {head.map((cell) => (
                  <th key={cell} scope="col">
                    {cell}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.join()}>
                  {row.map((cell, i) => (
                    <td key={head[i]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </figure>
  )
}
