import { type VisitWeighIn, weighInOfVisit } from '@chargewright/charging'
import { fail, type Problem, type Result } from '@chargewright/quantity'
import { checkVisitFile, factLabel, fold, type SystemStatement, type VisitEvent } from '@chargewright/visit'
import { withNearNames } from '../near-names.ts'
import { typedAccessories } from './typed-accessories.ts'
import { GEAR_FLAGS, type GearFlags, typedGear } from './typed-gear.ts'

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

/** @param data a visit file, as its JSON was parsed */
export function weighIn(data: unknown): Result<VisitWeighIn, readonly Problem[]> {
  const file = checkVisitFile(data)
  return file.ok ? withNames(weighInOfVisit(fold(file.value))) : file
}

/** Asks flags: they become the visit that would hold the same. */
export function weighInByFlags(flags: WeighInFlags): Result<VisitWeighIn, readonly Problem[]> {
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
  const found = withNames(weighInOfVisit(fold({ id: 'flags', events }), gear.value, accessories.value))
  // A flag that cannot be read is refused; an entry of a visit is left out and told beside the answer.
  if (!found.ok) return fail(found.error.map(byFlag))
  const unread = found.value.assessment.problems.map(({ problem }) => problem)
  return unread.length > 0 ? fail(unread) : found
}

/** A missing fact goes by the flag that says it. */
function byFlag(problem: Problem): Problem {
  const fact = FLAG_FACTS.find((name) => factLabel(name).toLowerCase() === problem.field.toLowerCase())
  const isMissing = problem.kind === 'missing' && fact !== undefined
  return isMissing
    ? { ...problem, accepted: `--${fact.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}` }
    : problem
}

/** Flags have no time; nothing that is asked here looks at it. */
const NO_TIME = '1970-01-01T00:00:00Z'

/** A refrigerant that is not known is answered with the names next to it. */
function withNames(found: Result<VisitWeighIn, readonly Problem[]>): Result<VisitWeighIn, readonly Problem[]> {
  if (found.ok) return found
  return fail(
    found.error.map((problem) => {
      const named = withNearNames(fail(problem))
      return named.ok ? problem : named.error
    }),
  )
}
