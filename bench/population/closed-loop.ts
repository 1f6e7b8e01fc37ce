import {
  type Conditions,
  conditions,
  dose,
  learn,
  type Observation,
  type Properties,
  propertiesOf,
  type Readings,
  SOUND,
  type System,
  size,
  solve,
} from '../../packages/cycle/src/index.ts'
import { findRefrigerant } from '../../packages/refrigerant/src/index.ts'
import { type Drawn, drawSystem } from './draw-system.ts'
import { instruments } from './instruments.ts'
import { type Random, seeded } from './random.ts'

type Kind = 'fixed-orifice' | 'capillary' | 'thermostatic'

interface Run {
  /** Final charge over right charge, minus 1. */
  readonly error: number
  readonly steps: number
  readonly harmful: number
  /** Whether the first 90 % interval held what was really missing. */
  readonly covered?: boolean
}

const MOST_STEPS = 8
const START_SD = 0.18

/** The technician's site: a hidden unit that takes refrigerant and shows readings. */
interface Site {
  readonly conditions: Conditions
  readonly read: () => ReturnType<ReturnType<typeof instruments>>
  /** Returns whether the step did harm: liquid at the compressor, or the high-pressure switch. */
  readonly weigh: (kg: number) => boolean
  readonly error: () => number
}

function site(
  drawn: Drawn,
  properties: Properties,
  start: number,
  weather: Conditions,
  random: Random,
): Site | undefined {
  let charge = start * drawn.right_kg
  const state = () => solve(drawn.truth, weather, { ...SOUND, charge_kg: charge })
  if (state().kind !== 'steady') return undefined
  const gauge = instruments(random)
  const readings = (): Readings => {
    const now = state()
    if (now.kind !== 'steady') throw new Error(`the hidden unit has no steady state at ${charge} kg`)
    return now.readings
  }
  const isHarmed = () => {
    const now = state()
    return now.kind === 'steady' && now.outcomes.some(({ kind }) => kind === 'flooded' || kind === 'high-pressure-trip')
  }
  return {
    conditions: weather,
    read: () => gauge(properties, readings(), weather.outdoor.dryBulb_K),
    weigh: (kg) => {
      const before = isHarmed()
      charge = Math.max(charge + kg, 0.3 * drawn.right_kg)
      return kg > 0 && !before && isHarmed()
    },
    error: () => charge / drawn.right_kg - 1,
  }
}

/** Superheat by the trade's rule ±5 °F, or nameplate subcooling ±3 °F, in steps of 5 % of the nameplate charge. */
function byPlainRule(at: Site, drawn: Drawn): Run {
  const { outdoor, indoor } = at.conditions
  const F = (K: number) => (K - 273.15) * 1.8 + 32
  const target = (3 * F(indoor.wetBulb_K) - 80 - F(outdoor.dryBulb_K)) / 2 / 1.8
  let [steps, harmful] = [0, 0]
  for (; steps < 12; steps++) {
    const read = at.read()
    const short =
      drawn.plate.device === 'thermostatic'
        ? (drawn.plate.subcooling_K! - read.subcooling_K.value) / (3 / 1.8)
        : (read.superheat_K.value - target) / (5 / 1.8)
    if (Math.abs(short) <= 1) break
    if (at.weigh(Math.sign(short) * 0.05 * drawn.plate.charge_kg)) harmful++
  }
  return { error: at.error(), steps, harmful }
}

/** Learn, take the dose, learn again; stop when what is left is small against the charge. */
function byTwin(at: Site, drawn: Drawn, twin: System): Run | undefined {
  const sets: Observation[] = []
  let [added, steps, harmful] = [0, 0, 0]
  let covered: boolean | undefined
  for (;;) {
    sets.push({ conditions: at.conditions, added_kg: added, readings: at.read() })
    const learned = learn(twin, sets)
    if (!learned) return undefined
    const next = dose(
      twin,
      learned,
      sets.at(-1)!,
      { kind: 'charge', charge_kg: drawn.plate.charge_kg, sd_kg: 0 },
      { flammable: false },
    )
    if (next && covered === undefined) {
      const missing = drawn.plate.charge_kg - drawn.right_kg * (1 + at.error())
      covered = next.low_kg <= missing && missing <= next.high_kg
    }
    if (!next || Math.abs(next.toGo_kg) < 0.04 * drawn.plate.charge_kg || steps === MOST_STEPS) break
    if (at.weigh(next.step_kg)) harmful++
    added += next.step_kg
    steps++
  }
  return { error: at.error(), steps, harmful, ...(covered === undefined ? {} : { covered }) }
}

/** A method has no test where its target is below 5 °F: neither policy is asked to charge there. */
function hasTarget(twin: System, weather: Conditions): boolean {
  const right = solve(twin, weather, { ...SOUND, charge_kg: twin.rated.charge_kg })
  return right.kind === 'steady' && right.readings.superheat_K >= 5 / 1.8
}

/** Weather in which the rule of thumb has a valid target. */
function drawWeather({ uniform }: Random): Conditions {
  for (;;) {
    const [outdoor, wetBulb] = [uniform(294, 312), uniform(288, 296)]
    const F = (K: number) => (K - 273.15) * 1.8 + 32
    const at = conditions(outdoor, wetBulb + uniform(4, 8), wetBulb)
    if (at.ok && (3 * F(wetBulb) - 80 - F(outdoor)) / 2 >= 6) return at.value
  }
}

export interface LoopSummary {
  readonly kind: Kind
  readonly units: number
  readonly refused: number
  readonly startRms: number
  readonly rule: PolicySummary
  readonly twin: PolicySummary
}

export interface PolicySummary {
  /** Share of first 90 % intervals that held the truth; the plain rule states none. */
  readonly coverage: number
  readonly rms: number
  readonly within5: number
  readonly within10: number
  readonly medianSteps: number
  readonly meanSteps: number
  readonly harmful: number
}

/** Both policies on the same units, weather, starts and instruments. */
export function closedLoop(kind: Kind, units: number, seed: number): LoopSummary {
  const random = seeded(seed)
  const refrigerants = ['R-410A', 'R-22', 'R-32', 'R-454B'].map(properties)
  const [rules, twins, starts]: [Run[], Run[], number[]] = [[], [], []]
  let refused = 0
  while (twins.length < units) {
    const fluid = random.one(refrigerants)
    const drawn = drawSystem(kind, fluid, random)
    if (!drawn) continue
    const weather = drawWeather(random)
    const start = Math.min(Math.max(1 + random.normal(0, START_SD), 0.5), 1.6)
    const instrumentSeed = Math.floor(random.uniform(0, 2 ** 31))
    const twin = size({ ...drawn.plate, properties: fluid })
    if (!twin.ok) {
      refused++
      continue
    }
    if (!hasTarget(twin.value, weather)) continue
    const [one, two] = [0, 1].map(() => site(drawn, fluid, start, weather, seeded(instrumentSeed)))
    if (!one || !two) continue
    const withTwin = byTwin(two, drawn, twin.value)
    if (!withTwin) {
      refused++
      continue
    }
    starts.push(start - 1)
    rules.push(byPlainRule(one, drawn))
    twins.push(withTwin)
  }
  return { kind, units, refused, startRms: rms(starts), rule: summary(rules), twin: summary(twins) }
}

function properties(name: string): Properties {
  const found = findRefrigerant(name)
  const tables = found.ok ? propertiesOf(found.value) : found
  if (!tables.ok) throw new Error(`no tables for ${name}`)
  return tables.value
}

function summary(runs: readonly Run[]): PolicySummary {
  const errors = runs.map(({ error }) => Math.abs(error))
  const steps = runs.map((run) => run.steps).sort((a, b) => a - b)
  return {
    rms: rms(errors),
    within5: errors.filter((e) => e <= 0.05).length / runs.length,
    within10: errors.filter((e) => e <= 0.1).length / runs.length,
    medianSteps: steps[runs.length >> 1]!,
    meanSteps: steps.reduce((a, b) => a + b, 0) / runs.length,
    coverage: runs.filter(({ covered }) => covered).length / runs.length,
    harmful: runs.reduce((sum, { harmful }) => sum + harmful, 0),
  }
}

const rms = (x: readonly number[]) => Math.sqrt(x.reduce((sum, value) => sum + value * value, 0) / x.length)
