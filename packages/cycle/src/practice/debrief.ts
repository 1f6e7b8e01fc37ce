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
  const isFaultGone = isMended(hidden)
  const mass = (kg: number) => quantity('mass', kg)
  const statements = [
    say`The system had ${PRACTICE_FAULTS[scenario.fault]}; it held ${mass(scenario.health.charge_kg)} where ${mass(right)} is right.`,
    ...chargeStatements(health.charge_kg, right),
    ...(isFaultGone ? [] : [say`The fault is still there.`]),
    ...stemStatements(hidden),
    ...harmStatements(harm),
  ]
  return { fault: scenario.fault, startError, finalError, isFaultGone, acts: log, harm, statements }
}

/** Of the fault that was hidden; what was put out of order since is told apart. */
function isMended({ scenario, health, indoorDirt, stemTurns }: Practice['hidden']): boolean {
  switch (scenario.fault) {
    case 'none':
      return true
    case 'low-indoor-air':
      return indoorDirt === 1
    case 'poor-condenser-air':
      return health.outdoorAirShare === 1
    case 'restriction':
      return health.restriction_Pa === 0
    case 'non-condensable':
      return health.nonCondensable_Pa === 0
    case 'worn-compressor':
      return health.wear === 0
    case 'valve-setting':
      return Math.abs(stemTurns) < STEM_TURNS
  }
}

/** A stem nearer to its setting than this stands right. */
const STEM_TURNS = 1
/** A charge nearer than this is the right one: no scale of a service van tells more. */
const RIGHT = 0.005

function chargeStatements(charge: number, right: number): readonly Statement[] {
  const [held, off] = [quantity('mass', charge), charge / right - 1]
  if (Math.abs(off) < RIGHT) return [say`It now holds ${held}: it is at the right charge.`]
  const percent = `${Math.abs(100 * off).toFixed(0)} %`
  return [say`It now holds ${held}: ${percent} ${off > 0 ? 'more' : 'less'} than is right.`]
}

function stemStatements({ scenario, stemTurns }: Practice['hidden']): readonly Statement[] {
  if (scenario.fault === 'valve-setting' || Math.abs(stemTurns) < STEM_TURNS) return []
  const turns = Math.abs(stemTurns)
  return [say`The valve stem was right; it now stands ${turns} turns ${stemTurns > 0 ? 'in' : 'out'}.`]
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
