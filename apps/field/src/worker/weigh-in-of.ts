import { type WeighingGear, weighInOfVisit } from '@chargewright/charging'
import { quantity } from '@chargewright/quantity'
import { fold, type Gear } from '@chargewright/visit'
import type { Tasks } from './protocol.ts'

/** The charge by weight with the gear that the visit names. */
export const weighInOf: Tasks['weighIn'] = (events) => {
  const visit = fold(events)
  return weighInOfVisit(visit, visit.gear && gearOf(visit.gear))
}

/** 70 °F, give or take ten: what a hose stands in where no temperature was read, common practice. */
const USUAL = quantity('temperature', (70 + 459.67) / 1.8, 10 / 1.8 / 2)

function gearOf({ scaleStep, hoseLength, hoseInside, cylinderTemperature, graduatedFor }: Gear): WeighingGear {
  const at = cylinderTemperature ?? USUAL
  return {
    ...(scaleStep && { scaleStep }),
    ...(hoseLength && hoseInside && { hose: { length: hoseLength, inside: hoseInside, at } }),
    ...(cylinderTemperature && { cylinder: cylinderTemperature }),
    ...(graduatedFor && { graduatedFor }),
  }
}
