import { sitePressure } from '@chargewright/charging'
import { DESK, evacuationCurve, PAGE, PHONE } from '@chargewright/picture'
import { ok, type UnitPreference, type Words } from '@chargewright/quantity'
import { pressureTestOfVisit, vacuumTestOfVisit } from '@chargewright/tightness'
import { fold, type VacuumTest } from '@chargewright/visit'
import type { SheetSize, Tightness, VisitEvents } from './protocol.ts'

/** Judges the last test under vacuum, which is drawn, and the last one under pressure. */
export function tightnessOf(events: VisitEvents, units: UnitPreference, size: SheetSize, words: Words): Tightness {
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
