import type { Assessment } from '@chargewright/charging'
import {
  chargingChart,
  evacuationCurve,
  type Picture,
  PRINT,
  plateOfVisit,
  type Sheet,
  stepsChart,
  subcoolingChart,
} from '@chargewright/picture'
import type { UnitPreference, Words } from '@chargewright/quantity'
import { vacuumTestOfVisit } from '@chargewright/tightness'
import type { Visit } from '@chargewright/visit'
import type { PdfNode } from './node.ts'
import { paragraph, SIZE } from './style.ts'

/** The pictures of a visit as vectors, one under the other. */
export function picturesPart(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  width: number,
  words: Words,
): readonly PdfNode[] {
  const sheet: Sheet = { width, height: 0.66 * width, text: 7.2, palette: PRINT }
  const anyPressure = assessment.measures.evaporatingTemperature ?? assessment.measures.condensingTemperature
  const pictures: readonly (Picture | undefined)[] = [
    chargingChart(visit, assessment, preference, sheet, words),
    subcoolingChart(visit, assessment, preference, sheet, words),
    stepsChart(visit, assessment, preference, sheet, words),
    vacuumOf(visit, preference, sheet, words),
    // A plate without a cycle on it tells nothing of this system.
    anyPressure && plateOfVisit(visit, assessment, preference, sheet, words),
  ]
  return pictures
    .filter((picture) => picture !== undefined)
    .map(({ title, svg }) => ({
      stack: [paragraph(title, { size: SIZE.body, bold: true, margin: [0, 9, 0, 3] }), { svg, width }],
      unbreakable: true,
    }))
}

/** The last vacuum test, where it can be judged. */
function vacuumOf({ vacuumTests }: Visit, preference: UnitPreference, sheet: Sheet, words: Words): Picture | undefined {
  const last = vacuumTests.at(-1)
  const judged = last && vacuumTestOfVisit(last)
  if (!judged?.ok) return undefined
  const { log, finding, criterion } = judged.value
  return evacuationCurve(log, finding, preference, sheet, criterion, words)
}
