import { aged } from './aged.ts'
import { atRest } from './at-rest.ts'
import type { DeviceKind, Plant, Truth } from './case.ts'
import { type Design, drawDesign } from './design.ts'
import type { Family } from './family.ts'
import { inflict } from './inflict.ts'
import { makersSuperheat } from './makers-superheat.ts'
import type { Running } from './operate.ts'
import type { Random } from './random.ts'
import { settle } from './settle.ts'
import { drawToolBag } from './tool-bag.ts'
import type { Unit, Weather } from './unit.ts'
import { drawWeather } from './weather.ts'

/**
 * A plant of this kind that runs, in its weather and with its visit's instruments. What is wrong with it is the
 * caller's; without that it is sound and its charge right within 4 %.
 */
export function drawPlant(kind: DeviceKind, random: Random, family: Family = {}, wrong?: Truth): Plant {
  for (;;) {
    const drawn = tryPlant(kind, random, family, wrong ?? { troubles: [], chargeError: random.uniform(-0.04, 0.04) })
    if (typeof drawn !== 'string') return drawn
  }
}

/** Why a draw is drawn again. */
export type Refusal = 'no maker would build it' | 'no steady state' | 'a switch stops it or its coil freezes'

export function tryPlant(kind: DeviceKind, random: Random, family: Family, wrong: Truth): Plant | Refusal {
  const design = drawDesign(kind, random, family)
  if (!design) return 'no maker would build it'
  const sound = aged(design.unit, random, family.spread ?? 1)
  const unit = wrong.troubles.reduce((u, { kind, severity }) => inflict(u, design, kind, severity, random), sound)
  const weather = drawWeather(random)
  const charge_kg = design.right_kg * (1 + wrong.chargeError)
  const start = settle(unit, design, weather, charge_kg)
  if (!start) return 'no steady state'
  if (isStopped(unit, start)) return 'a switch stops it or its coil freezes'
  return plant(design, unit, weather, start, wrong.troubles, random)
}

function plant(
  design: Design,
  unit: Unit,
  weather: Weather,
  start: Running,
  troubles: Truth['troubles'],
  random: Random,
): Plant {
  const write = drawToolBag(unit.fluid, random)
  let now: Running | undefined = start
  let charge_kg = start.charge_kg
  return {
    plate: design.plate,
    right_kg: design.right_kg,
    read: (wanted = 'ordinary') => now && write(now, weather, atRest(unit, charge_kg, weather.outdoor_K), wanted),
    makersSuperheat_K: (at) => makersSuperheat(design, at),
    weigh: (kg) => {
      const before = now
      charge_kg = Math.max(charge_kg + kg, 0.2 * design.right_kg)
      const after = settle(unit, design, weather, charge_kg)
      now = after && !isStopped(unit, after) ? after : undefined
      return { harm: !now || (isFlooding(now) && !(before && isFlooding(before))) }
    },
    truth: () => ({ troubles, chargeError: charge_kg / design.right_kg - 1 }),
  }
}

/** Saturation at which a high-pressure switch opens, and at which a coil would freeze shut or the low one opens. */
const HIGHEST_K = 341
const LOWEST_K = 263

function isStopped({ fluid }: Unit, { discharge_Pa, evaporating_K }: Running): boolean {
  return discharge_Pa > fluid.dewPressure(HIGHEST_K) || evaporating_K < LOWEST_K
}

/** More liquid at the compressor than its shell boils off. */
function isFlooding({ suctionQuality }: Running): boolean {
  return suctionQuality < 0.97
}
