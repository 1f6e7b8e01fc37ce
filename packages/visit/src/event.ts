import * as v from 'valibot'
import { OBSERVATION_IDS } from './observation-kind.ts'
import { READING_IDS } from './reading-kind.ts'
import { SystemFactsSchema } from './system.ts'

const Id = v.pipe(v.string(), v.nonEmpty(), v.maxLength(100))
const Typed = v.pipe(v.string(), v.nonEmpty(), v.maxLength(200))
const Text = v.pipe(v.string(), v.nonEmpty(), v.maxLength(10_000))
const Time = v.pipe(v.string(), v.isoTimestamp())

/** What is known of the instrument behind a reading. A plain one of its sort is assumed where it is absent. */
export const InstrumentSchema = v.strictObject({
  name: v.exactOptional(Typed),
  /** Greatest error at 95 %, typed: `0.5 psi`, `0.3 K`. */
  accuracy: v.exactOptional(Typed),
  /** Gauge class in percent of span (EN 837-1), together with `span`. */
  class: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(10))),
  span: v.exactOptional(Typed),
  /** Smallest step shown, typed. */
  resolution: v.exactOptional(Typed),
})

/** The entries of each kind of fact, as typed. */
const FACTS = {
  'system-described': { kind: v.literal('system-described'), facts: SystemFactsSchema },
  reading: {
    kind: v.literal('reading'),
    what: v.picklist(READING_IDS),
    value: Typed,
    instrument: v.exactOptional(InstrumentSchema),
  },
  observation: { kind: v.literal('observation'), what: v.picklist(OBSERVATION_IDS), answer: Typed },
  'refrigerant-moved': {
    kind: v.literal('refrigerant-moved'),
    direction: v.picklist(['into-system', 'out-of-system']),
    mass: Typed,
    phase: v.picklist(['liquid', 'vapour']),
    port: v.picklist(['suction', 'discharge', 'liquid-line', 'receiver']),
    compressor: v.picklist(['running', 'stopped']),
    refrigerant: v.exactOptional(Typed),
    cylinder: v.exactOptional(Typed),
    instrument: v.exactOptional(InstrumentSchema),
  },
  adjustment: { kind: v.literal('adjustment'), what: Text },
  wait: { kind: v.literal('wait'), purpose: v.picklist(['settle', 'equalise']), duration: Typed },
  photo: { kind: v.literal('photo'), subject: Text, file: Typed },
  note: { kind: v.literal('note'), text: Text },
} as const

/** What a correction may put in the place of an earlier fact. */
export const FactSchema = v.variant('kind', [
  v.strictObject(FACTS['system-described']),
  v.strictObject(FACTS.reading),
  v.strictObject(FACTS.observation),
  v.strictObject(FACTS['refrigerant-moved']),
  v.strictObject(FACTS.adjustment),
  v.strictObject(FACTS.wait),
  v.strictObject(FACTS.photo),
  v.strictObject(FACTS.note),
])

export type Fact = v.InferOutput<typeof FactSchema>
export type FactOf<Kind extends Fact['kind']> = Extract<Fact, { readonly kind: Kind }>
export type Instrument = v.InferOutput<typeof InstrumentSchema>

/** An id that is never used again, the time of entry as the device told it, and who entered it. */
const HEAD = { id: Id, at: Time, by: v.exactOptional(Typed) }

/**
 * One event: a fact or a correction. Events are only ever appended; their order in the file is the order in which they
 * happened, whatever the clock said.
 */
export const EventSchema = v.variant('kind', [
  v.strictObject({ ...HEAD, ...FACTS['system-described'] }),
  v.strictObject({ ...HEAD, ...FACTS.reading }),
  v.strictObject({ ...HEAD, ...FACTS.observation }),
  v.strictObject({ ...HEAD, ...FACTS['refrigerant-moved'] }),
  v.strictObject({ ...HEAD, ...FACTS.adjustment }),
  v.strictObject({ ...HEAD, ...FACTS.wait }),
  v.strictObject({ ...HEAD, ...FACTS.photo }),
  v.strictObject({ ...HEAD, ...FACTS.note }),
  v.strictObject({
    ...HEAD,
    kind: v.literal('correction'),
    /** Id of the earlier event that this one corrects. */
    corrects: Id,
    /** What should have been there; absent: the earlier event is withdrawn. */
    replacement: v.exactOptional(FactSchema),
    reason: v.exactOptional(Text),
  }),
])

export type VisitEvent = v.InferOutput<typeof EventSchema>
export type EventOf<Kind extends VisitEvent['kind']> = Extract<VisitEvent, { readonly kind: Kind }>
