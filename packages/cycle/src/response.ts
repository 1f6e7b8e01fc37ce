import { cycle } from './cycle.ts'
import { type Slopes, stepFrom, type Vector3 } from './newton.ts'
import { type Readings, readingsOf } from './readings.ts'
import type { Conditions, Health, System, Unknowns } from './system.ts'

/** What is seen of a system: figures drawn from its readings. */
export type Seen = (readings: Readings, system: System, health: Health) => Float64Array

/**
 * How what is seen of a solved system answers to small changes of the system, its health or the weather: the first-order
 * answer, from one time around the circuit per change. Slopes against the unknowns are taken once.
 *
 * @param unknowns those that solve the system
 */
export function responseAt(
  system: System,
  at: Conditions,
  health: Health,
  unknowns: Unknowns,
  seen: Seen,
): (changed: System, changedHealth: Health, changedAt?: Conditions) => Float64Array {
  const around = (of: System, health_: Health, at_: Conditions, u: Unknowns) => {
    const { residuals, ...state } = cycle(of, at_, health_, u)
    const r: Vector3 = [residuals.flow, residuals.evaporatorOutlet, residuals.charge]
    return { r, figures: seen(readingsOf(of, { residuals, ...state }), of, health_) }
  }
  const here = around(system, health, at, unknowns)
  const beside = NUDGES.map(([name, nudge]) =>
    around(system, health, at, { ...unknowns, [name]: unknowns[name] + nudge }),
  )
  const columns = beside.map(({ r }, k) => differences(r, here.r, NUDGES[k]![1])) as unknown as Slopes
  const along = beside.map(({ figures }, k) => figures.map((f, i) => (f - here.figures[i]!) / NUDGES[k]![1]))
  return (changed, changedHealth, changedAt = at) => {
    const { r, figures } = around(changed, changedHealth, changedAt, unknowns)
    const step = stepFrom(columns, r)
    for (let i = 0; i < figures.length; i++) {
      figures[i]! += step[0] * along[0]![i]! + step[1] * along[1]![i]! + step[2] * along[2]![i]!
    }
    return figures
  }
}

/** Small enough for six digits of slope: the cycle is closed forms good to 1e-14. */
const NUDGES = [
  ['lnSuction', 1e-6],
  ['lnCondensing', 1e-6],
  ['suctionEnthalpy_J_kg', 0.1],
] as const

const differences = (there: Vector3, here: Vector3, nudge: number): Vector3 => [
  (there[0] - here[0]) / nudge,
  (there[1] - here[1]) / nudge,
  (there[2] - here[2]) / nudge,
]
