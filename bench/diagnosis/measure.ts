import { conditions, type Nameplate, propertiesOf, SOUND, type System, solve } from '../../packages/cycle/src/index.ts'
import {
  type Cause,
  diagnose,
  familyOf,
  HYPOTHESES,
  type ReadingSet,
  SHIPPED_CALIBRATION,
} from '../../packages/diagnosis/src/index.ts'
import { findRefrigerant } from '../../packages/refrigerant/src/index.ts'

/** CPU time of this process alone, ms: a crowded machine does not count. */
export interface Timing {
  readonly device: string
  readonly family_ms: number
  /** In weather that it was never asked about. */
  readonly median_ms: number
  readonly p99_ms: number
  /** Median where only the circuit was read anew: predictions are kept while the weather stays. */
  readonly sameWeather_ms: number
  /** Median diagnosis in new weather over one solve. */
  readonly overSolve: number
}

const RUNS = 300
const WARM_UP = 40
const CASES: readonly (readonly [Cause, number])[] = [
  ['sound', 0],
  ['short-of-charge', -0.2],
  ['overcharged', 0.2],
  ['low-indoor-air', 0.4],
  ['poor-condenser-air', 0.4],
  ['liquid-line-restriction', 0.3],
]

export function measured(): { readonly devices: readonly Timing[] } {
  return { devices: (['fixed-orifice', 'capillary', 'thermostatic'] as const).map(timed) }
}

function timed(device: Nameplate['device']): Timing {
  const found = findRefrigerant('R-410A')
  const properties = found.ok ? propertiesOf(found.value) : found
  if (!properties.ok) throw new Error('no tables for R-410A')
  const plate: Nameplate = {
    properties: properties.value,
    application: 'comfort-cooling',
    device,
    capacity_W: 10_550,
    charge_kg: 3.2,
    efficiency: { kind: 'cop', cop: 3.3 },
  }
  const family_ms = times(20, () => familyOf(plate))[10]!
  const family = familyOf(plate)
  if (!family.ok) throw new Error(JSON.stringify(family.error))
  const { nominal } = family.value
  const sets = CASES.map(([cause, severity]) => reading(nominal, cause, severity))
  const run = (i: number, drift_K: number) => {
    const readings = sets[i % sets.length]!
    const later = { ...readings, outdoor_K: readings.outdoor_K + i * drift_K }
    return diagnose(family.value, [{ readings: later, added_kg: 0 }], { calibration: SHIPPED_CALIBRATION })
  }
  const inNewWeather = (i: number) => run(i, 1e-3)
  times(WARM_UP, inNewWeather)
  const sorted = times(RUNS, inNewWeather)
  const sameWeather = times(RUNS, (i) => run(i, 0))
  const at = weather()
  const perSolve_ms =
    times(20, () => {
      for (let i = 0; i < 100; i++) solve(nominal, at, { ...SOUND, charge_kg: 2.6 + 0.01 * i })
    })[10]! / 100
  const median_ms = sorted[Math.floor(RUNS / 2)]!
  return {
    device,
    family_ms,
    median_ms,
    p99_ms: sorted[Math.floor(0.99 * RUNS)]!,
    sameWeather_ms: sameWeather[Math.floor(RUNS / 2)]!,
    overSolve: median_ms / perSolve_ms,
  }
}

/** In ascending order. */
function times(runs: number, what: (i: number) => unknown): readonly number[] {
  return Array.from({ length: runs }, (_, i) => {
    const before = process.cpuUsage()
    what(i)
    const { user, system } = process.cpuUsage(before)
    return (user + system) / 1000
  }).toSorted((a, b) => a - b)
}

const OUTDOOR_K = 305.15
const RETURN_K = 299.15
const WET_BULB_K = 291.65

function weather() {
  const at = conditions(OUTDOOR_K, RETURN_K, WET_BULB_K)
  if (!at.ok) throw new Error(JSON.stringify(at.error))
  return at.value
}

/** What an ordinary visit reads on the twin itself with one cause at work. */
function reading(system: System, cause: Cause, severity: number): ReadingSet {
  const sound = { system, health: { ...SOUND, charge_kg: system.rated.charge_kg } }
  const state = HYPOTHESES[cause].apply(sound, severity)
  const solution = solve(state.system, weather(), state.health)
  if (solution.kind !== 'steady') throw new Error(solution.kind)
  const { readings } = solution
  return {
    outdoor_K: OUTDOOR_K,
    returnAir_K: RETURN_K,
    returnWetBulb_K: WET_BULB_K,
    suctionPressure_Pa: readings.suctionPressure_Pa,
    suctionLine_K: readings.suctionTemperature_K,
    liquidPressure_Pa: readings.liquidPressure_Pa,
    liquidLine_K: readings.liquidTemperature_K,
    dischargeLine_K: readings.dischargeTemperature_K,
    supplyAir_K: readings.supplyAir_K,
    compressorPower_W: readings.compressorPower_W,
  }
}
