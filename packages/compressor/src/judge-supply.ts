import {
  type Evidence,
  evidence,
  fail,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import { deratingFactor } from './derating-factor.ts'
import { average, voltageUnbalance } from './voltage-unbalance.ts'

/**
 * `stop`: do not run it. `doubtful`: it may run, derated, until the supply is put right. `sound`: neither voltage nor
 * unbalance is in the way.
 */
export interface SupplyFinding {
  readonly kind: 'sound' | 'doubtful' | 'stop'
  /** Fraction; of a three-phase supply. */
  readonly unbalance?: { readonly value: number; readonly u: number }
  /** Of full load, at which a three-phase motor may be run with this unbalance. */
  readonly derating?: number
  readonly reasons: readonly Evidence[]
  readonly steps: readonly Statement[]
}

/** What the supply is, in words. */
export const SUPPLY_WORDS: Readonly<Record<SupplyFinding['kind'], string>> = {
  sound: 'sound',
  doubtful: 'doubtful',
  stop: 'do not run it',
}

/**
 * Supply voltage against the nameplate, and the unbalance of three phases.
 *
 * @param voltages one for single phase, three between phases, measured running; 20 V to 1000 V
 * @param nominal nameplate voltage
 * @returns the finding; else the voltage that is out of range, or neither one nor three of them
 * @source NEMA MG-1: unbalance READ as quoted, not above 5 % READ, ± 10 % and derating REMEMBERED
 */
export function judgeSupply(
  voltages: readonly Quantity<'voltage'>[],
  nominal: Quantity<'voltage'>,
): Result<SupplyFinding, Problem> {
  if (voltages.length !== 1 && voltages.length !== 3) {
    return fail({
      kind: 'unreadable',
      field: 'voltages',
      value: `${voltages.length} voltages`,
      accepted: 'one, or three between phases',
    })
  }
  const problem = [nominal, ...voltages]
    .flatMap(({ si, u = 0 }) => [
      outOfRange('voltage', si, 20, 1000, 'V'),
      outOfRange('uncertainty of the voltage', u, 0, si, 'V'),
    ])
    .find((p) => p !== undefined)
  if (problem) return fail(problem)

  const level = levelOf(voltages, nominal)
  if (voltages.length === 1) {
    return ok({ kind: level.within ? 'sound' : 'doubtful', reasons: [level.evidence], steps: level.steps })
  }
  const unbalance = voltageUnbalance(voltages)
  const { value, u } = unbalance
  const derating = deratingFactor(value)
  const kind = value + u > STOP ? 'stop' : value > LITTLE || !level.within ? 'doubtful' : 'sound'
  return ok({
    kind,
    unbalance,
    ...(derating === undefined ? {} : { derating }),
    reasons: [level.evidence, unbalanceInWords(value, u), ...(kind === 'stop' ? [TOO_MUCH] : [])],
    steps: [...unbalanceSteps(kind, value, derating), ...level.steps],
  })
}

const TOLERANCE = 0.1
/** Above this a motor is derated. */
const LITTLE = 0.01
const STOP = 0.05

interface Level {
  readonly within: boolean
  readonly evidence: Evidence
  readonly steps: readonly Statement[]
}

function levelOf(voltages: readonly Quantity<'voltage'>[], nominal: Quantity<'voltage'>): Level {
  // One meter reads all three, so that its error does not shrink in the mean.
  const mean = quantity('voltage', average(voltages.map((v) => v.si)), average(voltages.map((v) => v.u ?? 0)))
  const low = quantity('voltage', (1 - TOLERANCE) * nominal.si)
  const high = quantity('voltage', (1 + TOLERANCE) * nominal.si)
  const side = mean.si < low.si ? 'below' : mean.si > high.si ? 'above' : 'within'
  return {
    within: side === 'within',
    evidence: evidence(
      say`Supply ${mean} is ${side} ${low} to ${high}`,
      'NEMA MG-1: nameplate voltage ± 10 % (recalled)',
    ),
    steps:
      side === 'within'
        ? []
        : [say`Find the cause of the voltage: connections, wire size, transformer taps, the utility`],
  }
}

function unbalanceInWords(value: number, u: number): Evidence {
  return evidence(
    say`Voltage unbalance ${percent(value)} ± ${percent(2 * u)} %: largest departure from the mean, over the mean`,
    'NEMA MG-1',
  )
}

const TOO_MUCH = evidence(say`No motor may run above ${percent(STOP)} %, and this may be`, 'NEMA MG-1 as quoted')

function unbalanceSteps(
  kind: SupplyFinding['kind'],
  value: number,
  derating: number | undefined,
): readonly Statement[] {
  const find = say`With the power locked out check connections, contactor and fuses of each phase; then single-phase loads, then the utility`
  if (kind === 'stop') return [say`Stop the compressor and lock it out until the supply is put right`, find]
  if (value <= LITTLE) return []
  return [find, ...(derating === undefined ? [] : [say`Until then load the motor to ${percent(derating)} % at most`])]
}

function percent(fraction: number): number {
  return Math.round(fraction * 1000) / 10
}
