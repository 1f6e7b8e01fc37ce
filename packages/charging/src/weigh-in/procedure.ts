import { type Quantity, quantity, type Statement, say } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import type { MeteringDevice } from '@chargewright/visit'
import { burns } from '../flammable.ts'
import { LIMITS } from '../limit.ts'

/** One step of the guided weigh-in. */
export interface ProcedureStep {
  readonly id: StepId
  readonly act: Statement
  /** How long to wait before the next step, at least. */
  readonly wait?: Quantity<'duration'>
  /** Go on only when this is seen. */
  readonly goOnWhen?: Statement
  readonly stops: readonly StopCondition[]
  readonly source: string
}

export type StepId =
  | 'tools'
  | 'access'
  | 'ventilate'
  | 'empty'
  | 'right-refrigerant'
  | 'cylinder-on-scale'
  | 'compressor-off'
  | 'fill-hose'
  | 'open'
  | 'close'
  | 'clear-hose'
  | 'equalise'
  | 'start'
  | 'rest-as-vapour'
  | 'settle'
  | 'seal'
  | 'record'

/** What stops the weigh-in, and what to do instead. */
export interface StopCondition {
  readonly seen: Statement
  /** Counted from the start of the step. */
  readonly after?: Quantity<'duration'>
  readonly means: Statement
  readonly instead: Statement
}

export interface WeighIn {
  readonly charge: Quantity<'mass'>
  /** How far off it may be. */
  readonly tolerance: Quantity<'mass'>
  readonly refrigerant: Refrigerant
  readonly meteringDevice?: MeteringDevice
}

const HABIT = 'common practice'
/** The low side answers through an open metering device within about this time: common practice. */
const LOW_SIDE_ANSWERS = quantity('duration', 60)

/**
 * The charge by weight, step by step: what it takes, a safe place and where the system opens, before anything is
 * connected; then into the evacuated, stopped system, as liquid, on the high side; then rest until the pressures are
 * equal, and only then start. The waits are clocks for the screen, the stops are for the technician.
 */
export function weighInProcedure(weighIn: WeighIn): readonly ProcedureStep[] {
  const { charge, tolerance, refrigerant, meteringDevice } = weighIn
  const isSealed = meteringDevice === 'capillary'
  return [
    step(
      'tools',
      say`Lay ready: a scale fine enough for ${tolerance}, the cylinder, short hoses that shut off at their ends, gauges, vacuum pump with its gauge, recovery machine and cylinder`,
    ),
    ...(burns(refrigerant.name) === 'no'
      ? []
      : [
          step('ventilate', say`Ventilate, keep ignition sources away and use equipment rated for ${refrigerant.name}`),
        ]),
    ...(isSealed ? [step('access', SEALED_ACCESS)] : []),
    step(
      'empty',
      say`Empty the system into a recovery cylinder, repair and pressure test it with dry nitrogen, evacuate it`,
      {
        goOnWhen: say`The vacuum holds with the pump shut off`,
        stops: [
          {
            seen: say`The vacuum does not hold`,
            means: say`It leaks, or it is not dry`,
            instead: say`Find the leak or evacuate further; charge nothing`,
          },
        ],
      },
    ),
    step('right-refrigerant', say`Read the cylinder and the nameplate: both must say ${refrigerant.name}`),
    step('cylinder-on-scale', say`Stand the cylinder on the scale so that it gives liquid, the hoses hanging free`),
    step('compressor-off', say`Lock out the power: the compressor stays off until all is in and has rested`),
    step(
      'fill-hose',
      say`Evacuate the hose, fill it up to the closed valve of the high side, then set the scale to zero`,
    ),
    step('open', say`Open the high side and let liquid in; watch the scale and the low-side gauge`, {
      goOnWhen: say`The low-side pressure rises`,
      stops: [lowSideSilent(meteringDevice)],
    }),
    step('close', say`Slow down towards the end and close the cylinder at ${charge}`, {
      stops: [
        {
          seen: say`More than ${charge} went in`,
          means: say`The system is overcharged`,
          instead: say`Recover the excess and weigh it; where the charge is critical, recover all and begin again`,
        },
      ],
    }),
    step(
      'clear-hose',
      say`Close the high side and recover at once what the hose holds: liquid shut in between two valves can burst it`,
    ),
    step('equalise', say`Leave the compressor off`, {
      wait: LIMITS.equaliseTime.quantity,
      goOnWhen: say`High and low side stand at the same pressure`,
    }),
    step('start', say`Give the power back and start`),
    step('rest-as-vapour', restAsVapour(refrigerant), {
      stops: [
        {
          seen: say`The suction line frosts or sweats back to the compressor, or the compressor knocks`,
          means: say`Liquid comes back to it`,
          instead: say`Close the cylinder at once, and stop the compressor if it knocks`,
        },
      ],
    }),
    step('settle', say`Let it run before anything is judged`, { wait: LIMITS.settleTime.quantity }),
    ...(isSealed ? [step('seal', SEAL)] : []),
    step(
      'record',
      isSealed
        ? say`Weigh the cylinder, write both weights down and check the seal for leaks`
        : say`Weigh the cylinder, write both weights down, cap the ports and check them for leaks`,
    ),
  ]
}

const SEALED_ACCESS = say`A sealed system has no service valves. Before anything is connected, find its process tube, or where one can be fitted, and have an adapter with a valve for it. On the high side the charge goes in as told below; on the low side only, it goes in there as vapour, the compressor off, in small weighed parts, waiting for the pressure to settle between them`

/** What ends the work on a system without ports. */
export const SEAL = say`Pinch the process tube off, seal it, and take the adapter off; where the refrigerant burns, without a flame`

function step(id: StepId, act: Statement, rest: Partial<Omit<ProcedureStep, 'id' | 'act'>> = {}): ProcedureStep {
  return { id, act, stops: [], source: HABIT, ...rest }
}

function lowSideSilent(device: MeteringDevice | undefined): StopCondition {
  const means =
    device === 'capillary'
      ? say`The capillary is blocked`
      : say`The metering device is shut or blocked, or a valve in the line is closed`
  return {
    seen: say`The low-side pressure has not risen`,
    after: LOW_SIDE_ANSWERS,
    means,
    instead: say`Close the cylinder and find the restriction; do not charge through the low side to get round it`,
  }
}

function restAsVapour({ kind, name }: Refrigerant): Statement {
  return kind === 'blend'
    ? say`Only if the cylinder gave no more before all was in: let the rest in slowly at the suction port; ${name} is a blend, so take liquid and throttle it to vapour before the port`
    : say`Only if the cylinder gave no more before all was in: let the rest in slowly at the suction port, as vapour`
}
