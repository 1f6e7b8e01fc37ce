import { type CompressorOfVisit, compressorOfVisit } from '@chargewright/charging'
import { judgeSupply } from '@chargewright/compressor'
import { compressorCurve, DESK, PAGE, PHONE } from '@chargewright/picture'
import { ok, type UnitPreference, type Words } from '@chargewright/quantity'
import { fold } from '@chargewright/visit'
import type { CompressorAnswer, SheetSize, VisitEvents } from './protocol.ts'

/** Judges power and current against the maker's figures, each drawn with its curve, and the supply. */
export function compressorOf(
  events: VisitEvents,
  units: UnitPreference,
  size: SheetSize,
  words: Words,
): CompressorAnswer {
  const visit = fold(events)
  const found = compressorOfVisit(visit)
  const drawn = ({ compressor, operating, ...judged }: CompressorOfVisit) => {
    const sheet = { ...(size === 'desk' ? DESK : PHONE), palette: PAGE }
    const pictures = judged.judged.flatMap(
      ({ measured }) => compressorCurve(compressor, operating, measured, units, sheet, words) ?? [],
    )
    return { ...judged, pictures }
  }
  return {
    ...(found && { rating: found.ok ? ok(drawn(found.value)) : found }),
    ...(visit.supply && { supply: judgeSupply(visit.supply.voltages, visit.supply.nominal) }),
  }
}
