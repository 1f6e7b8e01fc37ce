import { fail, ok, outOfRange, type Problem, type Result, type Statement } from '@chargewright/quantity'
import type { Device } from '../devices/device.ts'
import { solve } from '../solve.ts'
import type { Conditions, System } from '../system.ts'
import { soundHealth } from '../what-if.ts'
import { act } from './act.ts'
import { actInWords } from './act-in-words.ts'
import { type BenchRequest, LONGEST_WAIT_S } from './bench-request.ts'
import { type Debrief, debrief } from './debrief.ts'
import type { GaugeValues } from './gauges.ts'
import { type LogLine, look, type Practice, startPractice, wait } from './practice.ts'
import { practiceSystem, practiceWeather } from './practice-system.ts'
import { drawScenario } from './scenario.ts'
import { type SeededRandom, seededRandom } from './seeded-random.ts'

/** What is known of a practice system before anything is read. */
export interface BenchStart {
  readonly seed: number
  readonly device: Device['kind']
  readonly system: System
  /** What a sound system at its nameplate charge would show in this weather; none where no reading tells the charge. */
  readonly target_K?: number
  readonly conditions: Conditions
}

/** An act in words, with what the truth was right before and long after it. */
export interface BenchAct extends Omit<LogLine, 'act'> {
  readonly did: Statement
}

export type BenchAnswer =
  | { readonly kind: 'help' }
  | { readonly kind: 'look' | 'wait'; readonly practice: Practice; readonly readings: GaugeValues }
  | { readonly kind: 'act'; readonly practice: Practice; readonly did: Statement }
  | {
      readonly kind: 'debrief'
      readonly practice: Practice
      readonly debrief: Debrief
      readonly acts: readonly BenchAct[]
    }

/** A run on the bench: what it starts with, and its answer to each request in turn. */
export interface BenchSession {
  readonly start: BenchStart
  /** Refuses what cannot be done, and everything after the debrief. */
  readonly answer: (request: BenchRequest) => Result<BenchAnswer, Problem>
}

/** Starts a run; the same seed, device and receiver give the same system, fault, weather and instruments. */
export function benchSession(
  seed: number,
  device: Device['kind'],
  receiver = false,
): Result<BenchSession, readonly Problem[]> {
  const random = seededRandom(seed)
  // Neighbouring seeds begin with neighbouring numbers.
  random()
  const system = practiceSystem(device, receiver)
  if (!system.ok) return system
  const weather = practiceWeather(random)
  if (!weather.ok) return weather
  const practice = startPractice(system.value, drawScenario(system.value, random), weather.value, random)
  return ok({
    start: { seed, device, system: system.value, conditions: weather.value, ...target(system.value, weather.value) },
    answer: answering(practice, random),
  })
}

function answering(first: Practice, random: SeededRandom): BenchSession['answer'] {
  let practice = first
  let ended = false
  const dids: Statement[] = []
  return (request) => {
    if (ended)
      return fail({ kind: 'unknown', field: 'bench', value: request.kind, accepted: 'nothing after a debrief' })
    switch (request.kind) {
      case 'help':
        return ok({ kind: 'help' })
      case 'look':
        return ok({ kind: 'look', practice, readings: look(practice, random) })
      case 'wait': {
        const problem = outOfRange('wait', request.duration_s, 0, LONGEST_WAIT_S, 's')
        if (problem) return fail(problem)
        practice = wait(practice, request.duration_s)
        return ok({ kind: 'wait', practice, readings: look(practice, random) })
      }
      case 'debrief':
        ended = true
        return ok({ kind: 'debrief', practice, debrief: debrief(practice), acts: actsOf(practice, dids) })
      default: {
        const done = act(practice, request)
        if (!done.ok) return done
        practice = done.value
        const did = actInWords(request)
        dids.push(did)
        return ok({ kind: 'act', practice, did })
      }
    }
  }
}

const actsOf = ({ log }: Practice, dids: readonly Statement[]): readonly BenchAct[] =>
  log.map(({ clock_s, before, after }, i) => ({ clock_s, before, after, did: dids[i]! }))

/** Below this superheat none is tested for: California residential appendix RA3.2. */
const LEAST_SUPERHEAT_K = 5 / 1.8

/** Superheat for a fixed device and subcooling for a valve, as a chart made by the model would have it. */
function target(system: System, at: Conditions): Pick<BenchStart, 'target_K'> {
  const sound = solve(system, at, soundHealth(system))
  if (sound.kind !== 'steady' || system.device.kind === 'automatic') return {}
  const { superheat_K, subcooling_K } = sound.readings
  if (system.receiver) return {}
  if (!targetsSuperheat(system)) return { target_K: subcooling_K }
  return superheat_K < LEAST_SUPERHEAT_K ? {} : { target_K: superheat_K }
}

export const targetsSuperheat = ({ device }: System): boolean =>
  device.kind === 'fixed-orifice' || device.kind === 'capillary'
