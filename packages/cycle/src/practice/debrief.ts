import { quantity, type Statement, say } from '@chargewright/quantity'
import type { Harm, LogLine, Practice } from './practice.ts'
import { PRACTICE_FAULTS, type PracticeFault } from './scenario.ts'

/** What a practice run was, what each act did, and how it ended. */
export interface Debrief {
  readonly fault: PracticeFault
  readonly startError: number
  /** Final charge over right charge, minus 1. */
  readonly finalError: number
  readonly isFaultGone: boolean
  readonly acts: readonly LogLine[]
  readonly harm: Harm
  readonly statements: readonly Statement[]
}

export function debrief({ hidden, log, harm }: Practice): Debrief {
  const { scenario, system, health } = hidden
  const right = system.rated.charge_kg
  const startError = scenario.health.charge_kg / right - 1
  const finalError = health.charge_kg / right - 1
  const isFaultGone =
    hidden.indoorDirt === 1 &&
    health.outdoorAirShare === 1 &&
    health.restriction_Pa === 0 &&
    health.nonCondensable_Pa === 0 &&
    health.wear === 0 &&
    Math.abs(hidden.stemTurns) < 1
  const mass = (kg: number) => quantity('mass', kg)
  const statements = [
    say`The system had ${PRACTICE_FAULTS[scenario.fault]}; it held ${mass(scenario.health.charge_kg)} where ${mass(right)} is right.`,
    say`It now holds ${mass(health.charge_kg)}: ${percent(finalError)} of the right charge.`,
    ...(isFaultGone ? [] : [say`The fault is still there.`]),
    ...harmStatements(harm),
  ]
  return { fault: scenario.fault, startError, finalError, isFaultGone, acts: log, harm, statements }
}

function harmStatements(harm: Harm): readonly Statement[] {
  const mass = (kg: number) => quantity('mass', kg)
  const statements: Statement[] = []
  if (harm.liquidIntoSuction_kg > 0) {
    statements.push(
      say`${mass(harm.liquidIntoSuction_kg)} of liquid went into the running low side: that breaks valves and washes out oil.`,
    )
  }
  if (harm.liquidAtCompressor_s > 0) {
    statements.push(say`Liquid reached the compressor for ${quantity('duration', harm.liquidAtCompressor_s)}.`)
  }
  if (harm.vented_kg > 0)
    statements.push(say`${mass(harm.vented_kg)} was vented: that is forbidden and must be recovered.`)
  if (harm.overfilled_kg > 0) {
    statements.push(say`The recovery cylinder holds ${mass(harm.overfilled_kg)} more than 80 % of its volume.`)
  }
  if (harm.trips > 0) statements.push(say`The high-pressure switch opened ${harm.trips} times.`)
  return statements
}

const percent = (share: number) => `${share >= 0 ? '+' : '−'}${Math.abs(100 * share).toFixed(0)} %`
