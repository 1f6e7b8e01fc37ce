import { judgeSupply } from '@chargewright/compressor'
import { compressorCurve, DESK, PAGE, PHONE } from '@chargewright/picture'
import { ok, type UnitPreference, type Words } from '@chargewright/quantity'
import { fold } from '@chargewright/visit'
import { compressorAsFound } from './compressor-as-found.ts'
import type { CompressorAnswer, SheetSize, VisitEvents } from './protocol.ts'

/** Judges power and current against the maker's figures, each drawn with its curve, and the supply. */
export function compressorOf(
  events: VisitEvents,
  units: UnitPreference,
  size: SheetSize,
  words: Words,
): CompressorAnswer {
  const visit = fold(events)
  const { compressorRating } = visit.system.facts
  const against = (figures: string) => {
    const found = compressorAsFound(figures, visit)
    if (!found.ok) return found
    const { compressor, operating, ...judged } = found.value
    const sheet = { ...(size === 'desk' ? DESK : PHONE), palette: PAGE }
    const pictures = judged.judged.flatMap(
      ({ measured }) => compressorCurve(compressor, operating, measured, units, sheet, words) ?? [],
    )
    return ok({ ...judged, pictures })
  }
  return {
    ...(compressorRating !== undefined && { rating: against(compressorRating) }),
    ...(visit.supply && { supply: judgeSupply(visit.supply.voltages, visit.supply.nominal) }),
  }
}
