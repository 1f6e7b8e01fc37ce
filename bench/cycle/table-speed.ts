import { propertiesOf } from '../../packages/cycle/src/index.ts'
import {
  bubbleTemperature,
  buildTable,
  dewTemperature,
  entropyAt,
  findRefrigerant,
  lookUp,
  tableState,
  vapourEnthalpyAtEntropy,
} from '../../packages/refrigerant/src/index.ts'
import { milliseconds } from './time.ts'

const POINTS = 1000
const ROUNDS = 400
const [LOWEST_PA, RANGE] = [4e5, 6]

/** What the cycle asks of a refrigerant most, of the twin's tables and of the refrigerant package's, ns per answer. */
export function tableSpeed(name: string) {
  const refrigerant = findRefrigerant(name)
  if (!refrigerant.ok) throw new Error(name)
  const [twin, table] = [propertiesOf(refrigerant.value), buildTable(refrigerant.value)]
  if (!twin.ok || !table.ok) throw new Error(name)
  const own = twin.value
  const theirs = table.value
  // Pressures without a pattern, so that no cell stays in sight.
  const p = Float64Array.from({ length: POINTS }, (_, i) => LOWEST_PA * RANGE ** (((i * 7919) % POINTS) / POINTS))
  const at = Array.from(p, (pressure) => own.saturated(pressure))
  const h = at.map(({ vapourEnthalpy_J_kg }, i) => vapourEnthalpy_J_kg + 5e3 + (i % 40) * 1e3)
  const s = at.map((saturated, i) => own.vapour(saturated, h[i]!).entropy_J_kgK)
  const out = tableState()
  let sum = 0
  const each = (answer: (i: number) => number) => {
    const round = () => {
      for (let i = 0; i < POINTS; i++) sum += answer(i)
    }
    return (milliseconds(round, ROUNDS) * 1e6) / POINTS
  }
  const result = {
    refrigerant: name,
    saturated_ns: each((i) => own.saturated(p[i]!).dew_K),
    packageBubbleAndDew_ns: each((i) => bubbleTemperature(theirs, p[i]!) + dewTemperature(theirs, p[i]!)),
    vapour_ns: each((i) => own.vapour(at[i]!, h[i]!).entropy_J_kgK),
    packageVapour_ns: each((i) => (lookUp(theirs, p[i]!, h[i]!, out) ? entropyAt(theirs, p[i]!, h[i]!) : 0)),
    isentropic_ns: each((i) => own.isentropic(at[i]!, s[i]!)),
    packageIsentropic_ns: each((i) => vapourEnthalpyAtEntropy(theirs, p[i]!, s[i]!)),
  }
  if (!Number.isFinite(sum)) throw new Error(`${name}: a look-up left its table`)
  return result
}
