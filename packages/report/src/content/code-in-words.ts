import type { Condition, LookAlike } from '@chargewright/charging'
import { type Statement, say } from '@chargewright/quantity'
import type { FactOf } from '@chargewright/visit'

/** How far a condition holds. */
export const STATES: Readonly<Record<Condition['state'], Statement>> = {
  met: say`is met`,
  doubtful: say`doubtful`,
  unmet: say`is not met`,
  unknown: say`not known`,
}

/** How another cause was judged. */
export const VERDICTS: Readonly<Record<LookAlike['verdict'], Statement>> = {
  explains: say`would explain it`,
  excluded: say`ruled out`,
  open: say`still open`,
  unlikely: say`unlikely`,
}

/** Into the system, or out of it. */
export const DIRECTIONS = { in: say`went in`, out: say`came out` } as const

export const PHASES = { vapour: say`vapour`, liquid: say`liquid` } as const
export const COMPRESSOR = { running: say`compressor running`, stopped: say`compressor stopped` } as const

/** Where refrigerant was moved. */
export const PORTS: Readonly<Record<FactOf<'refrigerant-moved'>['port'], Statement>> = {
  suction: say`suction port`,
  discharge: say`discharge port`,
  'liquid-line': say`liquid-line port`,
  receiver: say`receiver`,
}
