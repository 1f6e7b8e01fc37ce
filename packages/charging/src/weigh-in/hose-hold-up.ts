import {
  evidence,
  fail,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Contents } from './contents.ts'

type Mass = Quantity<'mass'>

/** Hoses and manifold hold 20 to 100 g. Recalled, common practice: the middle, with limits (JCGM 100:2008, 4.3.7). */
export const HABITUAL_HOLD_UP: Mass = quantity('mass', 0.06, 0.04 / Math.sqrt(3))

/** What a hose of known size holds: π/4 · d² · length · density. */
export function hoseHoldUp(
  hose: { readonly inside: Quantity<'length'>; readonly length: Quantity<'length'> },
  contents: Contents,
): Result<Measure<Mass>, Problem> {
  const { inside, length } = hose
  const problem =
    outOfRange('hose, inside diameter', inside.si, 0, 0.1, 'm') ?? outOfRange('hose, length', length.si, 0, 100, 'm')
  if (problem) return fail(problem)
  const volume = quantity('volume', (Math.PI / 4) * inside.si ** 2 * length.si)
  const mass = quantity('mass', volume.si * contents.density_kg_m3, volume.si * contents.u_kg_m3)
  const statement = say`The hose holds ${mass}: ${length} long, ${volume} inside, full of ${contents.words}`
  return ok({ quantity: mass, evidence: evidence(statement, contents.source) })
}
