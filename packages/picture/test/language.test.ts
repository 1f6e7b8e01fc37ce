import { INCH_POUND, METRIC, type Words } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { EXAMPLES } from '../../../examples/example-visits.ts'
import {
  chargingChart,
  convergenceChart,
  DESK,
  PHONE,
  plateOfVisit,
  stepsChart,
  subcoolingChart,
} from '../src/index.ts'
import { textsOf } from './drawn.ts'

/** Every text is marked, so that one which nobody looked up shows. */
const marked: Words = (english) => `«${english}»`
const DRAWINGS = [chargingChart, subcoolingChart, stepsChart, convergenceChart, plateOfVisit]

/** Words outside of all marks that are no unit. */
function notLookedUp(text: string): readonly string[] {
  let bare = text
  while (/«[^«»]*»/.test(bare)) bare = bare.replace(/«[^«»]*»/g, '')
  return (bare.match(/\p{L}{2,}/gu) ?? []).filter((word) => !UNITS.has(word))
}

const UNITS = new Set(['psig', 'psia', 'bar', 'lb', 'oz', 'kg', 'Btu', 'kJ'])

describe('in another language', () => {
  test.each(EXAMPLES.map((each) => [each.name, each] as const))(
    '[property] %s: title, description, labels and table are looked up, and no label is cut',
    (_, { visit, assessment }) => {
      for (const [preference, sheet] of [
        [INCH_POUND, DESK],
        [METRIC, PHONE],
      ] as const) {
        for (const drawing of DRAWINGS) {
          const picture = drawing(visit, assessment, preference, sheet, marked)
          if (!picture) continue
          const { svg, title, description, table } = picture
          const labels = textsOf(svg)
          const said = [title, description, ...table.head, ...table.rows.flat(), ...labels.map(({ words }) => words)]
          expect(notLookedUp(said.join('\n'))).toEqual([])
          for (const { words, left, right } of labels) {
            expect([words, left >= -0.02 && right <= sheet.width + 0.02]).toEqual([words, true])
          }
        }
      }
    },
  )
})
