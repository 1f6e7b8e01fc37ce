import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { compressor } from '../components/compressor.ts'
import type { Properties, Saturated } from '../refrigerant/properties.ts'
import type { Guess, Habits } from './habits.ts'
import type { Nameplate } from './nameplate.ts'
import { unitCompressor } from './size-compressor.ts'

/** Temperatures and efficiency at which the nameplate's efficiency and the habits of such systems agree best. */
export interface RatingPoint {
  readonly evaporating: Saturated
  readonly condensing: Saturated
  readonly bestEfficiency: number
  readonly indoorFan_W: number
  readonly outdoorFan_W: number
}

type Free = readonly [evaporating_K: number, approach_K: number, lnEfficiency: number]

/** Beyond this many standard deviations in the best agreement the nameplate is refused. */
const FURTHEST = 3

/**
 * Evaporating temperature, condensing temperature and compressor efficiency together, by weighted least squares: each
 * habit pulls with its own spread, the stated efficiency with its. Fixing any of them beforehand gives nonsense at
 * high efficiencies, where makers improve all three.
 *
 * @returns refused when even three standard deviations in the best direction do not reach the stated efficiency
 */
export function ratingPoint(plate: Nameplate, habits: Habits, subcooling: number): Result<RatingPoint, Problem> {
  const agreed = agreement(plate, habits, subcooling)
  return agreed.ok ? ok(pointAt(plate, habits, agreed.value)) : agreed
}

function agreement(plate: Nameplate, habits: Habits, subcooling: number): Result<Free, Problem> {
  const guesses = [habits.evaporating_K, habits.condensingApproach_K, habits.lnEfficiency] as const
  const start = guesses.map(({ value }) => value) as unknown as Free
  const stated = statedCop(plate, habits)
  if (!stated) return ok(start)

  const lnCop = (x: Free) => Math.log(copAt(plate, habits, subcooling, x))
  let x = start
  for (let i = 0; i < 8; i++) x = agreed(x, start, guesses, lnCop, Math.log(stated.cop), stated.sd)
  const strain = Math.max(...x.map((value, i) => Math.abs(value - start[i]!) / guesses[i]!.sd))
  const least = LEAST_APPROACH_K
  if (strain <= FURTHEST && x[1] >= least) return ok(x)
  const reach = (direction: number) => copAt(plate, habits, subcooling, furthest(start, guesses, lnCop, direction))
  return fail({
    kind: 'out-of-range',
    field: 'rated efficiency',
    value: stated.cop,
    min: reach(-1),
    max: reach(1),
    unit: 'W/W',
  })
}

/**
 * The habits of systems with this nameplate, once it has had its say: temperatures and efficiency where they agree best.
 * The temperatures now stand fast, so that a design with others is one whose efficiency makes up for it.
 */
export function agreedHabits(plate: Nameplate, habits: Habits): Result<Habits, Problem> {
  const subcooling = plate.receiver ? 0 : (plate.subcooling_K ?? habits.subcooling_K)
  const agreed = agreement(plate, habits, subcooling)
  if (!agreed.ok) return agreed
  const [evaporating, approach, lnEfficiency] = agreed.value
  return ok({
    ...habits,
    evaporating_K: { value: evaporating, sd: FAST_SD_K },
    condensingApproach_K: { value: approach, sd: FAST_SD_K },
    lnEfficiency: { value: lnEfficiency, sd: FREE_SD },
  })
}

const FAST_SD_K = 1e-4
const FREE_SD = 0.5

/** A smaller difference to the outdoor air no condenser of this size reaches. */
const LEAST_APPROACH_K = 4

/** One Gauss–Newton step of the least squares, in closed form because there is a single statement. */
function agreed(
  x: Free,
  start: Free,
  guesses: readonly Guess[],
  f: (x: Free) => number,
  wanted: number,
  sd: number,
): Free {
  const [value, slope] = [f(x), gradient(f, x)]
  const variance = slope.reduce((sum, g, i) => sum + (g * guesses[i]!.sd) ** 2, 0) + sd * sd
  const moved = slope.reduce((sum, g, i) => sum + g * (x[i]! - start[i]!), 0)
  const pull = (wanted - value + moved) / variance
  return x.map((_, i) => start[i]! + guesses[i]!.sd ** 2 * slope[i]! * pull) as unknown as Free
}

function furthest(start: Free, guesses: readonly Guess[], f: (x: Free) => number, direction: number): Free {
  const weighted = gradient(f, start).map((g, i) => g * guesses[i]!.sd)
  const length = Math.hypot(...weighted)
  return start.map((value, i) => {
    const there = value + (direction * FURTHEST * guesses[i]!.sd * weighted[i]!) / length
    return i === 1 ? Math.max(there, LEAST_APPROACH_K) : there
  }) as unknown as Free
}

function gradient(f: (x: Free) => number, x: Free): readonly number[] {
  const here = f(x)
  return x.map((value, i) => {
    const d = i === 2 ? 1e-4 : 1e-2
    return (f(x.map((v, j) => (i === j ? value + d : v)) as unknown as Free) - here) / d
  })
}

function statedCop({ efficiency, capacity_W }: Nameplate, habits: Habits) {
  if (!efficiency) return undefined
  const fans = (habits.indoorFan + habits.outdoorFan) * capacity_W
  switch (efficiency.kind) {
    case 'cop':
      return { cop: efficiency.cop, sd: 0.01 }
    case 'compressor-power':
      return { cop: capacity_W / (efficiency.power_W + fans), sd: 0.02 }
    case 'rated-load-current': {
      // Running current at rating is about 0.75 of the rated-load current, the power factor 0.9: common practice.
      const root = efficiency.phases === 3 ? Math.sqrt(3) : 1
      const power = 0.75 * 0.9 * root * efficiency.current_A * efficiency.voltage_V
      return { cop: capacity_W / (power + fans), sd: 0.15 }
    }
  }
}

/** Net cooling over all power of the plain cycle at these temperatures. */
function copAt({ properties, capacity_W, compressorType }: Nameplate, habits: Habits, subcooling: number, x: Free) {
  const [evaporating_K, approach_K, lnEfficiency] = x
  const low = evaporatingAt(properties, evaporating_K)
  const high = condensingAt(properties, habits.outdoor_K + approach_K)
  const enthalpy = low.vapourEnthalpy_J_kg + low.vapourHeat_J_kgK * 6
  const gas = properties.vapour(low, enthalpy)
  const machine = unitCompressor(compressorType ?? habits.compressorType, habits, Math.exp(lnEfficiency))
  const { flow_kg_s, power_W } = compressor(machine, properties, low, high, gas, enthalpy, 0)
  const gross = enthalpy - (high.liquidEnthalpy_J_kg - high.liquidHeat_J_kgK * subcooling)
  const pumping = ((capacity_W * (1 + habits.indoorFan)) / gross) * (power_W / flow_kg_s)
  return capacity_W / (pumping + (habits.indoorFan + habits.outdoorFan) * capacity_W)
}

/** A coil feels the mean temperature of its two-phase stretch: all of the glide in a condenser, most in an evaporator. */
const condensingAt = (properties: Properties, mean_K: number): Saturated => withGlide(properties, mean_K, 0.5)
const evaporatingAt = (properties: Properties, mean_K: number): Saturated => withGlide(properties, mean_K, 0.4)

function withGlide(properties: Properties, mean_K: number, dewAbove: number): Saturated {
  const near = properties.saturated(properties.dewPressure(mean_K))
  return properties.saturated(properties.dewPressure(mean_K + dewAbove * (near.dew_K - near.bubble_K)))
}

function pointAt({ properties, capacity_W }: Nameplate, habits: Habits, x: Free): RatingPoint {
  return {
    evaporating: evaporatingAt(properties, x[0]),
    condensing: condensingAt(properties, habits.outdoor_K + x[1]),
    bestEfficiency: Math.exp(x[2]),
    indoorFan_W: habits.indoorFan * capacity_W,
    outdoorFan_W: habits.outdoorFan * capacity_W,
  }
}
