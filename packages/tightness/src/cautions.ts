import { type Statement, say } from '@chargewright/quantity'

export interface Caution {
  readonly id: string
  readonly statement: Statement
  readonly source: string
}

const HABIT = 'common practice'

/** What can hurt someone or the compressor while a system is under test pressure; the gravest first. */
export const PRESSURE_TEST_CAUTIONS: readonly Caution[] = [
  {
    id: 'nitrogen-only',
    statement: say`Dry nitrogen only: oxygen with oil explodes, air brings water and oxygen`,
    source: HABIT,
  },
  {
    id: 'regulator',
    statement: say`Use a regulator and a relief valve set no higher than the lowest test pressure on the nameplates`,
    source: HABIT,
  },
  {
    id: 'stay-clear',
    statement: say`Raise the pressure in steps and stand clear; never tighten or braze a joint under pressure`,
    source: HABIT,
  },
  { id: 'authority', statement: say`The maker's instructions, local codes and a licence come first`, source: HABIT },
]

/** The same for a system under vacuum. */
export const EVACUATION_CAUTIONS: readonly Caution[] = [
  {
    id: 'no-start',
    statement: say`Never run a hermetic compressor in a vacuum, nor test its insulation there: the windings arc`,
    source: HABIT,
  },
  {
    id: 'recover-first',
    statement: say`Recover the refrigerant before pulling a vacuum: the pump would vent it`,
    source: HABIT,
  },
  { id: 'authority', statement: say`The maker's instructions, local codes and a licence come first`, source: HABIT },
]
