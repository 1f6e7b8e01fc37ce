import { evidence, type Quantity, quantity, say } from '@chargewright/quantity'
import type { Dose } from './assessment.ts'
import { careful, type Sized } from './dose.ts'
import { GREATEST_STEP_SHARE, LIMITS, RECEIVER_FILL, RECEIVER_STEP_SHARE, STARVED_STEP_FACTOR } from './limit.ts'
import type { Case } from './ruling.ts'
import { liquidAt } from './weigh-in/contents.ts'
import { liquidTemperature } from './weigh-in/liquid-temperature.ts'

type Mass = Quantity<'mass'>

/**
 * A step for a system with a receiver, which shows by its glass that it is short, and not by how much. Such a system
 * takes pounds where one without a receiver takes ounces, and a receiver makes room for a little too much: so it is fed
 * as vapour while it runs and the glass is watched, and the step is only the most that goes in before it is read again.
 * Where the glass stands empty there is nothing to watch: then liquid goes into the receiver of the stopped system, in
 * steps twice as large.
 *
 * No step is more than the receiver may hold, where its volume is known: a glass with vapour in it says that the
 * receiver is empty down to its outlet.
 *
 * @source *common practice*
 */
export function glassDose(asked: Case, glass: 'bubbles' | 'empty'): Dose {
  const room = receiverRoom(asked)
  const [mass_kg, from] = careful(asked, withinReceiver(stepSize(asked, glass, room), room))
  const mass = quantity('mass', mass_kg)
  return {
    direction: 'into-system',
    mass,
    withoutTwin: say`a sight glass tells that charge is missing, not how much`,
    ...(glass === 'bubbles'
      ? { phase: 'vapour', port: 'suction', compressor: 'running', until: 'glass-clears' }
      : { phase: 'liquid', port: 'receiver', compressor: 'stopped' }),
    evidence: evidence(say`Step of ${mass}`, undefined, from),
  }
}

/** A share of the charge, else of what the receiver holds, else what is usual. */
function stepSize(asked: Case, glass: 'bubbles' | 'empty', room: Mass | undefined): Sized {
  const factor = glass === 'empty' ? STARVED_STEP_FACTOR : 1
  const charge = asked.visit.system.figures.nameplateCharge?.quantity
  if (charge) {
    const share = factor * GREATEST_STEP_SHARE
    return [share * charge.si, [evidence(say`At most ${percent(share)} of the nameplate charge ${charge}`, HABIT)]]
  }
  if (room) {
    const share = factor * RECEIVER_STEP_SHARE
    const statement = say`At most ${percent(share)} of the ${room} that the receiver may hold`
    return [share * room.si, [evidence(statement, 'own choice: several steps fit in before it is full')]]
  }
  const { quantity: usual, source } = LIMITS.watchedStep
  const statement = say`Neither the nameplate charge nor the volume of the receiver is entered: at most ${usual}`
  return [usual.si, [evidence(statement, source)]]
}

function withinReceiver([mass_kg, from]: Sized, room: Mass | undefined): Sized {
  if (!room || mass_kg <= room.si) return [mass_kg, from]
  return [room.si, [...from, evidence(say`The receiver may hold ${room}, ${percent(RECEIVER_FILL)} full`, HABIT)]]
}

/** The liquid in a receiver as full as it may be; undefined where its volume is not known or nothing is liquid there. */
function receiverRoom(asked: Case): Mass | undefined {
  const volume = asked.visit.system.figures.receiverVolume?.quantity
  if (!volume) return undefined
  const liquid = liquidAt(asked.refrigerant, liquidTemperature(asked))
  return liquid.ok ? quantity('mass', RECEIVER_FILL * volume.si * liquid.value.density_kg_m3) : undefined
}

const HABIT = 'common practice'
const percent = (share: number) => `${Math.round(100 * share)} %`
