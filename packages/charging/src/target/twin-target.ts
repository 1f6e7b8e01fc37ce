import { conditions, type System, soundHealth, targetAt } from '@chargewright/cycle'
import { evidence, type Quantity, quantity, type Statement, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { familyOfSystem } from '../diagnosis/family-of-system.ts'
import { LIMITS } from '../limit.ts'
import type { Measures } from '../measures/measures.ts'
import { sitePressure } from '../measures/site-pressure.ts'
import { typedIn } from '../measures/typed-in.ts'
import type { SuperheatTarget } from './superheat-target.ts'

const SOURCE = 'estimated by model of this system, sized from its nameplate'

/**
 * The superheat that the model of this very system has in this weather at its nameplate charge. Undefined where the facts
 * make no model or the weather was not read whole.
 */
export function twinTarget(visit: Visit, measures: Measures): SuperheatTarget | undefined {
  const outdoor = visit.readings['condenser-entering-air']
  const dryBulb = visit.readings['return-air-dry-bulb']
  const wetBulb = measures.returnWetBulb
  if (visit.system.facts.receiver || !outdoor || !dryBulb || !wetBulb) return undefined
  const family = familyOfSystem(visit.system)
  if (!family.ok) return undefined
  const at = superheatAt(family.value.nominal, sitePressure(visit, []).quantity.si)
  const [out, dry, wet] = [outdoor.quantity, dryBulb.quantity, wetBulb.quantity]
  const here = at(out.si, dry.si, wet.si)
  if (typeof here !== 'number') return { kind: 'none', because: here, source: SOURCE }
  // Shifts of one standard uncertainty carry the weather's through the model (JCGM 100:2008, 5.1.3, note 2).
  // Where one way leads out of what has a target, the other one tells.
  const shift = (moved: (by: 1 | -1) => number | Statement) => {
    const there = moved(1)
    const seen = typeof there === 'number' ? there : moved(-1)
    return typeof seen === 'number' ? seen - here : 0
  }
  const u = Math.hypot(
    shift((by) => at(out.si + by * uOf(out), dry.si, wet.si)),
    shift((by) => at(out.si, dry.si + by * uOf(dry), wet.si)),
    shift((by) => at(out.si, dry.si, wet.si - by * uOf(wet))),
  )
  const value = quantity('temperature difference', here, u)
  return {
    kind: 'target',
    source: 'twin',
    departure: LIMITS.twinDeparture.quantity.si,
    measure: {
      quantity: value,
      evidence: evidence(say`Target superheat ${value}`, SOURCE, [
        typedIn(outdoor),
        typedIn(dryBulb),
        wetBulb.evidence,
      ]),
    },
  }
}

const uOf = ({ u = 0 }: Quantity) => u

/** In K; or why there is none in that weather. */
const superheatAt =
  (system: System, site_Pa: number) =>
  (outdoor_K: number, dryBulb_K: number, wetBulb_K: number): number | Statement => {
    const weather = conditions(outdoor_K, dryBulb_K, Math.min(wetBulb_K, dryBulb_K), site_Pa)
    if (!weather.ok) return say`the model of this system does not reach this weather`
    const cell = targetAt(system, soundHealth(system), weather.value, 'superheat_K')
    if (cell.kind === 'target') return cell.value_K
    return cell.because === 'below-least-target'
      ? say`the model of this system has less superheat than can be tested in this weather`
      : say`the model of this system has no steady target in this weather`
  }
