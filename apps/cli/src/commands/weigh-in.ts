import {
  type Accessory,
  type Assessment,
  assess,
  entryLabel,
  type ProcedureStep,
  type Target,
  weighInProcedure,
} from '@chargewright/charging'
import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import {
  checkVisitFile,
  fold,
  type SystemStatement,
  type Visit,
  type VisitEvent,
  type VisitFile,
} from '@chargewright/visit'
import { missing } from '../failure.ts'
import { withNearNames } from '../near-names.ts'
import { typedAccessories } from './typed-accessories.ts'
import { GEAR_FLAGS, type GearFlags, typedGear } from './typed-gear.ts'
import { type Weighing, type WeighingGear, weighing } from './weighing.ts'

/** What to weigh in, and how, step by step. */
export interface WeighInAnswer {
  readonly charge: Target
  /** What is still to go in; absent where it is in, or where something else comes first. */
  readonly toGoIn?: Quantity<'mass'>
  /** What scale, hose and charging cylinder make of that. */
  readonly weighing?: Weighing
  readonly procedure: readonly ProcedureStep[]
  readonly assessment: Assessment
  /** The system still holds a charge: the answer is for when it is empty. */
  readonly stillCharged: boolean
}

/** The system as its flags describe it, each as a visit file has it. */
export type WeighInFlags = Readonly<Partial<Record<(typeof FLAG_FACTS)[number], string>>> &
  GearFlags & {
    readonly liquidTemperature?: string
    readonly accessory?: readonly string[]
  }

const FLAG_FACTS = [
  'refrigerant',
  'meteringDevice',
  'nameplateCharge',
  'lineLength',
  'includedLineLength',
  'lineChargePerLength',
  'liquidLineTube',
  'oldDrierVolume',
  'newDrierVolume',
  'floodingCharge',
] as const

export const SYSTEM_FLAGS = [...FLAG_FACTS, ...GEAR_FLAGS, 'liquidTemperature', 'accessory'] as const

/** What a visit does not say: parts that were added, and with what the charge is measured out. */
interface Besides extends WeighingGear {
  readonly accessories?: readonly Accessory[]
}

/** @param data a visit file, as its JSON was parsed */
export function weighIn(data: unknown): Result<WeighInAnswer, readonly Problem[]> {
  const file = checkVisitFile(data)
  return file.ok ? answer(file.value, {}) : file
}

/** Asks flags: they become the visit that would hold the same. */
export function weighInByFlags(flags: WeighInFlags): Result<WeighInAnswer, readonly Problem[]> {
  const facts = Object.fromEntries(
    FLAG_FACTS.flatMap((name) => (flags[name] === undefined ? [] : [[name, flags[name]]])),
  ) as SystemStatement
  const { liquidTemperature } = flags
  const gear = typedGear(flags)
  const accessories = typedAccessories(flags.accessory ?? [])
  if (!gear.ok || !accessories.ok) return fail([gear, accessories].flatMap((read) => (read.ok ? [] : read.error)))
  const events: VisitEvent[] = [
    { id: 'system', at: NO_TIME, kind: 'system-described', facts },
    ...(liquidTemperature === undefined
      ? []
      : [
          { id: 'liquid', at: NO_TIME, kind: 'reading', what: 'liquid-temperature', value: liquidTemperature } as const,
        ]),
    { id: 'emptied', at: NO_TIME, kind: 'observation', what: 'charge-state', answer: 'evacuated' },
  ]
  const besides = { ...gear.value, accessories: accessories.value }
  const found = answer({ format: 'chargewright-visit', version: 1, id: 'flags', events }, besides)
  // A flag that cannot be read is refused; an entry of a visit is left out and told beside the answer.
  const unread = found.ok ? found.value.assessment.problems.map(({ problem }) => problem) : []
  return unread.length > 0 ? fail(unread) : found
}

/** Flags have no time; nothing that is asked here looks at it. */
const NO_TIME = '1970-01-01T00:00:00Z'

function answer(file: VisitFile, besides: Besides): Result<WeighInAnswer, readonly Problem[]> {
  const visit = fold(file)
  const state = visit.observations['charge-state']?.answer
  if (state === 'evacuated' || state === 'lost') return weighedIn(visit, false, besides)
  // What is not yet empty is asked about as it will be.
  const emptied: VisitEvent = {
    id: `${file.id}/emptied`,
    at: visit.log.at(-1)?.at ?? NO_TIME,
    kind: 'observation',
    what: 'charge-state',
    answer: 'evacuated',
  }
  return weighedIn(fold({ ...file, events: [...file.events, emptied] }), true, besides)
}

function weighedIn(
  visit: Visit,
  stillCharged: boolean,
  { accessories = [], ...gear }: Besides,
): Result<WeighInAnswer, readonly Problem[]> {
  const assessment = assess(visit, accessories)
  const { finding, target } = assessment
  const name = visit.system.facts.refrigerant
  const refrigerant = name === undefined ? undefined : withNearNames(findRefrigerant(name))
  if (!refrigerant) return fail([missing('refrigerant', 'the one on the nameplate')])
  if (!refrigerant.ok) return fail([refrigerant.error])
  if (!target) return fail([...assessment.problems.map(({ problem }) => problem), ...whatIsMissing(assessment)])
  const { meteringDevice } = visit.system.facts
  const toGoIn = finding.dose?.direction === 'into-system' ? finding.dose.mass : undefined
  const charge = toGoIn ?? (target.quantity as Quantity<'mass'>)
  const procedure = weighInProcedure({
    charge,
    refrigerant: refrigerant.value,
    ...(meteringDevice ? { meteringDevice } : {}),
  })
  const weighed = toGoIn && weighing(refrigerant.value, toGoIn, target.tolerance.quantity as Quantity<'mass'>, gear)
  if (weighed && !weighed.ok) return weighed
  return ok({
    charge: target,
    ...(toGoIn ? { toGoIn } : {}),
    ...(weighed ? { weighing: weighed.value } : {}),
    // One that is empty already need not be emptied.
    procedure: toGoIn ? procedure.filter(({ id }) => stillCharged || id !== 'empty') : [],
    assessment,
    stillCharged,
  })
}

function whatIsMissing({ finding }: Assessment): readonly Problem[] {
  const entries = finding.next.map(({ entry }) => missing(entryLabel(entry), 'it in the visit, or by its flag'))
  return entries.length > 0
    ? entries
    : [missing('charge', 'a system that is charged by weight, with its nameplate charge')]
}
