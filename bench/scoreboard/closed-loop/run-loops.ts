import type { DeviceKind, Plant, Truth } from '../../population/case.ts'
import { drawPlant } from '../../population/draw-plant.ts'
import { SEVERITIES } from '../../population/inflict.ts'
import { type Random, seeded } from '../../population/random.ts'
import { SHIPPED } from '../judges/our-diagnosis.ts'
import { answer } from '../run/answer.ts'
import { diagnosed } from './diagnosed.ts'
import type { Hidden, LoopRun } from './loop-result.ts'
import { OTHER_TROUBLES } from './other-troubles.ts'
import { plainRule, ruleOfThumb_K } from './plain-rule.ts'
import { twinDose } from './twin-dose.ts'

/** So many plants of one kind, each given to every policy as it was at first. */
export interface LoopJob {
  readonly kind: DeviceKind
  readonly hidden: Hidden
  /** Number of the first plant. */
  readonly first: number
  readonly count: number
  readonly seed: number
}

const POLICIES = [plainRule, twinDose, diagnosed(SHIPPED)]
/** Behind a valve there is no chart of superheat. */
const WITH_CHART = [...POLICIES, diagnosed(SHIPPED, true)]

answer(({ kind, hidden, first, count, seed }: LoopJob): readonly LoopRun[] =>
  Array.from({ length: count }, (_, k) => {
    const draw = plantOf(kind, hidden, seeded(Math.imul(seed, 0x9e3779b1) ^ Math.imul(first + k, 0x85ebca6b)))
    return (kind === 'thermostatic' ? POLICIES : WITH_CHART).map(({ name, run }): LoopRun => {
      const plant = draw()
      const before = plant.truth().chargeError
      const result = run(plant)
      const missing_kg = -before * plant.right_kg
      const stated = result?.first
      return {
        policy: name,
        kind,
        hidden,
        before,
        after: plant.truth().chargeError,
        ...(result ? { run: result } : {}),
        ...(stated ? { held: stated.low_kg <= missing_kg && missing_kg <= stated.high_kg } : {}),
      }
    })
  }).flat(),
)

/** How far the charge is off at first: standard deviation, and no further than systems still run. */
const START_SD = 0.18
const START_MOST = 0.45
/** Charge that is right: within what the instruments of a first fill leave. */
const RIGHT = [-0.04, 0.04] as const
/** 6 °F: below, the trade's rule has no target or nearly none. */
const LEAST_TARGET_K = 6 / 1.8

/** The same plant again at every call, in weather in which all policies may work. */
function plantOf(kind: DeviceKind, hidden: Hidden, random: Random): () => Plant {
  for (;;) {
    const wrong = drawTruth(kind, hidden, random)
    const seed = random.seed()
    const draw = () => drawPlant(kind, seeded(seed), {}, wrong)
    const readings = draw().read('ordinary')
    if (!readings) continue
    if (kind === 'thermostatic' || ruleOfThumb_K(readings.outdoor_K, readings.returnWetBulb_K) >= LEAST_TARGET_K)
      return draw
  }
}

function drawTruth(kind: DeviceKind, hidden: Hidden, { normal, uniform, one }: Random): Truth {
  switch (hidden) {
    case 'wrong charge':
      return { troubles: [], chargeError: Math.min(Math.max(normal(0, START_SD), -START_MOST), START_MOST) }
    case 'nothing':
      return { troubles: [], chargeError: uniform(...RIGHT) }
    case 'another trouble': {
      const trouble = one(OTHER_TROUBLES[kind])
      return {
        troubles: [{ kind: trouble, severity: uniform(...SEVERITIES[trouble]) }],
        chargeError: uniform(...RIGHT),
      }
    }
  }
}
