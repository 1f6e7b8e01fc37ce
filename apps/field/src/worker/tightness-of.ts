import { sitePressure } from '@chargewright/charging'
import { DESK, evacuationCurve, PAGE, PHONE } from '@chargewright/picture'
import { ok } from '@chargewright/quantity'
import { pressureTestOfVisit, vacuumTestOfVisit } from '@chargewright/tightness'
import { fold, type VacuumTest } from '@chargewright/visit'
import { wordsOf } from '../words/language.ts'
import type { Tasks } from './protocol.ts'

/** Judges the last test under vacuum, which is drawn, and the last one under pressure. */
export const tightnessOf: Tasks['tightness'] = async (events, units, size, language) => {
  const words = await wordsOf(language)
  const visit = fold(events)
  const judgeVacuum = (test: VacuumTest) => {
    const judged = vacuumTestOfVisit(test)
    if (!judged.ok) return judged
    const { log, finding, criterion } = judged.value
    const sheet = { ...(size === 'desk' ? DESK : PHONE), palette: PAGE }
    return ok({ finding, picture: evacuationCurve(log, finding, units, sheet, criterion, words) })
  }
  const [vacuum, pressure] = [visit.vacuumTests.at(-1), visit.pressureTests.at(-1)]
  return {
    ...(vacuum && { vacuum: judgeVacuum(vacuum) }),
    ...(pressure && { pressure: pressureTestOfVisit(pressure, sitePressure(visit, []).quantity) }),
  }
}
