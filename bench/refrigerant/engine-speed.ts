import { guess } from '../../packages/refrigerant/src/equilibrium/first-point.ts'
import { incipient, solveIncipient } from '../../packages/refrigerant/src/equilibrium/incipient.ts'
import { solveLine } from '../../packages/refrigerant/src/equilibrium/saturation-line.ts'
import { findRefrigerant, type Refrigerant, refrigerantNames } from '../../packages/refrigerant/src/index.ts'
import { nanosecondsPerCall, spread } from './time.ts'

export interface EngineSpeed {
  readonly name: string
  readonly components: number
  /** From Raoult's law and the components' own saturation lines, nothing known of the blend; µs. */
  readonly coldBubble_us: number
  readonly coldDew_us: number
  /** Plain Newton from the dew point one kelvin below, without the traced line; µs. */
  readonly oneKelvinAway_us: number
  /** Started between nodes of the traced line, as every public call is; µs. */
  readonly tracedByTemperature_us: number
  readonly tracedByPressure_us: number
  readonly unsolved: number
}

const CALLS = 200

export function engineSpeed(refrigerant: Refrigerant): EngineSpeed {
  const { engine, critical, name, components } = refrigerant
  const places = spread(CALLS)
  let unsolved = 0
  const cold = (side: 'bubble' | 'dew') => {
    const work = incipient(engine.model, engine.moleFractions, side)
    return nanosecondsPerCall(CALLS, () => {
      for (const u of places) {
        const T = critical.temperature_K * (0.72 + 0.2 * u)
        guess(work, T)
        if (solveIncipient(work, 'temperature', Math.log(T), 30) === 0) unsolved++
      }
    })
  }
  const oneKelvinAway = () => {
    const { work } = engine.dew
    const temperatures = places.map((u) => critical.temperature_K * (0.72 + 0.2 * u))
    const starts = [...temperatures].map((T) => {
      if (!solveLine(engine.dew, 'temperature', Math.log(T - 1))) unsolved++
      return work.u.slice()
    })
    return nanosecondsPerCall(CALLS, () => {
      for (let k = 0; k < CALLS; k++) {
        work.u.set(starts[k]!)
        if (solveIncipient(work, 'temperature', Math.log(temperatures[k]!), 12) === 0) unsolved++
      }
    })
  }
  const { minPressure_Pa, maxPressure_Pa, minTemperature_K, maxTemperature_K } = engine.limits.saturation
  const traced = (specified: 'temperature' | 'pressure') =>
    nanosecondsPerCall(CALLS, () => {
      for (const u of places) {
        const value =
          specified === 'temperature'
            ? Math.log(minTemperature_K + (0.4 + 0.6 * u) * (maxTemperature_K - minTemperature_K))
            : Math.log(minPressure_Pa) + (0.3 + 0.69 * u) * Math.log(maxPressure_Pa / minPressure_Pa)
        if (!solveLine(engine.dew, specified, value)) unsolved++
      }
    })
  return {
    name,
    components: components.length,
    coldBubble_us: cold('bubble') / 1000,
    coldDew_us: cold('dew') / 1000,
    oneKelvinAway_us: oneKelvinAway() / 1000,
    tracedByTemperature_us: traced('temperature') / 1000,
    tracedByPressure_us: traced('pressure') / 1000,
    unsolved,
  }
}

/** How much of 213 K to 0.97, and of 0.97 to 0.998 of the critical temperature, is solved by T and by p. */
export function coverage(): {
  readonly solved: number
  readonly asked: number
  readonly nearSolved: number
  readonly nearAsked: number
} {
  let solved = 0
  let asked = 0
  let nearSolved = 0
  let nearAsked = 0
  for (const name of refrigerantNames()) {
    const found = findRefrigerant(name)
    if (!found.ok) continue
    const { engine, critical } = found.value
    const coldest = Math.max(213.15, engine.limits.saturation.minTemperature_K)
    for (let k = 0; k <= 40; k++) {
      const near = k > 30
      const top = 0.97 * critical.temperature_K
      const T = near
        ? critical.temperature_K * (0.97 + ((k - 30) / 10) * (0.998 - 0.97) * (1 - 1e-9))
        : coldest + (k / 30) * (top - coldest)
      for (const line of [engine.bubble, engine.dew]) {
        const byT = solveLine(line, 'temperature', Math.log(T))
        const lnT = line.work.u[line.work.u.length - 1]!
        const byP = byT && solveLine(line, 'pressure', line.work.lnP)
        const same = byP && Math.abs(line.work.u[line.work.u.length - 1]! - lnT) < 1e-8
        if (near) {
          nearAsked += 2
          nearSolved += (byT ? 1 : 0) + (same ? 1 : 0)
        } else {
          asked += 2
          solved += (byT ? 1 : 0) + (same ? 1 : 0)
        }
      }
    }
  }
  return { solved, asked, nearSolved, nearAsked }
}
