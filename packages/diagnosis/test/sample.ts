import { conditions, type Nameplate, propertiesOf, SOUND, solve, TWIN_VERSION } from '@chargewright/cycle'
import { findRefrigerant } from '@chargewright/refrigerant'
import {
  type Calibration,
  type Cause,
  type Diagnosis,
  diagnose,
  type Family,
  familyOf,
  HYPOTHESES,
  type Knowledge,
  OBSERVABLE_NAMES,
  type ReadingSet,
  type WeighedSet,
} from '../src/index.ts'

/** Invented three-ton air conditioners, read without error: what the twin makes of itself. */
export type Device = 'fixed-orifice' | 'capillary' | 'thermostatic'

export const RIGHT_KG = 3.2

function plate(device: Device): Nameplate {
  const found = findRefrigerant('R-410A')
  const properties = found.ok ? propertiesOf(found.value) : found
  if (!properties.ok) throw new Error('no tables for R-410A')
  return {
    properties: properties.value,
    application: 'comfort-cooling',
    device,
    capacity_W: 10_550,
    charge_kg: RIGHT_KG,
    efficiency: { kind: 'cop', cop: 3.3 },
  }
}

const made = new Map<Device, Family>()

/** Sized once per device for all tests of a file. */
export function family(device: Device): Family {
  const known = made.get(device)
  if (known) return known
  const sized = familyOf(plate(device))
  if (!sized.ok) throw new Error(JSON.stringify(sized.error))
  made.set(device, sized.value)
  return sized.value
}

export interface Weather {
  readonly outdoor_C: number
  readonly returnAir_C: number
  readonly wetBulb_C: number
}

const WARM: Weather = { outdoor_C: 32, returnAir_C: 26, wetBulb_C: 18.5 }
const CELSIUS = 273.15

/** Everything read on a system with these causes, each at its severity, and its charge this far off besides. */
export function reading(
  device: Device,
  causes: Readonly<Partial<Record<Cause, number>>>,
  weather: Weather = WARM,
  added_kg = 0,
): ReadingSet {
  const system = family(device).nominal
  let state = { system, health: { ...SOUND, charge_kg: RIGHT_KG + added_kg } }
  for (const [cause, severity] of Object.entries(causes)) state = HYPOTHESES[cause as Cause].apply(state, severity)
  const outdoor_K = weather.outdoor_C + CELSIUS
  const returnAir_K = weather.returnAir_C + CELSIUS
  const returnWetBulb_K = weather.wetBulb_C + CELSIUS
  const at = conditions(outdoor_K, returnAir_K, returnWetBulb_K)
  if (!at.ok) throw new Error(JSON.stringify(at.error))
  const solution = solve(state.system, at.value, state.health)
  if (solution.kind !== 'steady') throw new Error(solution.kind)
  const { readings } = solution
  return {
    outdoor_K,
    returnAir_K,
    returnWetBulb_K,
    suctionPressure_Pa: readings.suctionPressure_Pa,
    suctionLine_K: readings.suctionTemperature_K,
    liquidPressure_Pa: readings.liquidPressure_Pa,
    liquidLine_K: readings.liquidTemperature_K,
    dischargeLine_K: readings.dischargeTemperature_K,
    condenserLeavingAir_K: readings.leavingCondenserAir_K,
    supplyAir_K: readings.supplyAir_K,
    drierInlet_K: readings.liquidTemperature_K,
    drierOutlet_K: readings.deviceTemperature_K,
    compressorPower_W: readings.compressorPower_W,
    power_W: readings.power_W,
  }
}

/** For the twin's own readings: it errs by nothing but the designs and the instruments. */
export const EXACT: Calibration = (() => {
  const all = (value: number) => Object.fromEntries(OBSERVABLE_NAMES.map((name) => [name, value])) as never
  const device = {
    offset: all(0),
    discrepancy: all(0.01),
    spread: {},
    chargeResponse: { short: 1, over: 1 },
    signature: 0.05,
    flattening: 1,
    intervalWidth: 1,
    learntFrom: 0,
  }
  const devices = { 'fixed-orifice': device, capillary: device, thermostatic: device }
  return { version: 'exact', twin: TWIN_VERSION, source: 'the twin itself', devices }
})()

export function diagnosed(
  device: Device,
  sets: ReadingSet | readonly WeighedSet[],
  knowledge: Partial<Knowledge> = {},
): Diagnosis {
  const list = 'outdoor_K' in sets ? [{ readings: sets, added_kg: 0 }] : sets
  const found = diagnose(family(device), list, { calibration: EXACT, ...knowledge })
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

export const probabilityOf = ({ singles }: Diagnosis, cause: Cause): number =>
  singles.find((single) => single.cause === cause)?.probability ?? 0
