import type { Case, DeviceKind, Trouble, Truth } from './case.ts'
import { type Refusal, tryPlant } from './draw-plant.ts'
import type { Family } from './family.ts'
import { SEVERITIES } from './inflict.ts'
import { type Random, seeded } from './random.ts'

export interface Drawing {
  readonly kind: DeviceKind
  readonly half: Case['half']
  readonly count: number
  readonly seed: number
  readonly family?: Family
}

/**
 * Cases of one kind, each of a plant of its own. Plants are numbered: those with odd numbers are of the seen half, the
 * even ones of the unseen half, and a number with a seed always gives the same plant.
 *
 * A quarter is sound with a charge right within 4 %; a fifth has two troubles, one of them the charge in half of those;
 * of the rest half are wrongly charged and half have another trouble.
 *
 * @param refused told of each draw that was drawn again, and what was wrong there
 */
export function* drawCases(
  { kind, half, count, seed, family = {} }: Drawing,
  refused: (why: Refusal, wrong: Truth) => void = () => {},
): Generator<Case> {
  for (let k = 0; k < count; k++) {
    const id = 2 * k + (half === 'seen' ? 1 : 2)
    const random = seeded(Math.imul(seed, 0x9e3779b1) ^ Math.imul(id, 0x85ebca6b) ^ KIND_SEED[kind])
    const wanted = drawTrouble(kind, random)
    for (;;) {
      // The same troubles in another plant and of another severity: what cannot run must not thin out a trouble.
      const wrong = withSeverities(wanted, random)
      const plant = tryPlant(kind, seeded(random.seed()), family, wrong)
      if (typeof plant === 'string') {
        refused(plant, wrong)
        continue
      }
      const readings = plant.read('ordinary')
      if (!readings) continue
      const everything = plant.read('everything') ?? readings
      const makersSuperheat_K = plant.makersSuperheat_K(readings)
      const chart = makersSuperheat_K === undefined ? {} : { makersSuperheat_K }
      yield { id, half, plate: plant.plate, readings, everything, ...chart, truth: plant.truth() }
      break
    }
  }
}

const KIND_SEED: Readonly<Record<DeviceKind, number>> = {
  'fixed-orifice': 0x1f,
  capillary: 0x2e3,
  thermostatic: 0x4d71,
}

const CHARGE: readonly Trouble[] = ['short-of-charge', 'overcharged']
const OTHERS: Readonly<Record<DeviceKind, readonly Trouble[]>> = {
  'fixed-orifice': [
    'low-indoor-air',
    'poor-condenser-air',
    'liquid-line-restriction',
    'non-condensables',
    'weak-compressor',
  ],
  capillary: ['low-indoor-air', 'poor-condenser-air', 'liquid-line-restriction', 'non-condensables', 'weak-compressor'],
  thermostatic: [
    'low-indoor-air',
    'poor-condenser-air',
    'liquid-line-restriction',
    'non-condensables',
    'weak-compressor',
    'valve-feeds-too-little',
    'valve-feeds-too-much',
  ],
}

function drawTrouble(kind: DeviceKind, { uniform, one, chance }: Random): readonly Trouble[] {
  const place = uniform(0, 1)
  if (place < 0.25) return []
  if (place < 0.8) return [chance(0.5) ? one(CHARGE) : one(OTHERS[kind])]
  const first = one(OTHERS[kind])
  const second = chance(0.5)
    ? one(CHARGE)
    : one(OTHERS[kind].filter((other) => other !== first && !areBothValve(first, other)))
  return [first, second]
}

const areBothValve = (a: Trouble, b: Trouble) => a.startsWith('valve') && b.startsWith('valve')

function withSeverities(kinds: readonly Trouble[], { uniform }: Random): Truth {
  const troubles = kinds.map((kind) => ({ kind, severity: uniform(...SEVERITIES[kind]) }))
  const charge = troubles.find(({ kind }) => CHARGE.includes(kind))
  const chargeError = charge ? (charge.kind === 'overcharged' ? 1 : -1) * charge.severity : uniform(-0.04, 0.04)
  return { troubles, chargeError }
}
