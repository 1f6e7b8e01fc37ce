import * as v from 'valibot'
import { OBSERVATION_IDS } from './observation-kind.ts'
import { READING_IDS } from './reading-kind.ts'
import { SystemStatementSchema } from './system.ts'
import { Identifier, Prose, Typed, typed } from './text.ts'

/** More visits than a system will see. */
const MOST_VISITS = 10_000

/** What is known of the instrument behind a reading. A plain one of its sort is assumed where it is absent. */
export const InstrumentSchema = v.strictObject({
  name: v.exactOptional(Typed),
  accuracy: v.exactOptional(typed('Greatest error, as a 95 % band, with its unit: 0.5 psi, 0.3 K')),
  class: v.exactOptional(
    v.pipe(
      v.number(),
      v.minValue(0),
      v.maxValue(10),
      v.description('Gauge class (EN 837-1): greatest error in percent of the span, which must be given too'),
    ),
  ),
  span: v.exactOptional(typed('Span of the scale, with its unit: 500 psi')),
  resolution: v.exactOptional(typed('Smallest step shown, with its unit: 0.1 °F')),
})

/** The entries of each kind of fact, as typed. */
const FACTS = {
  'system-described': { kind: v.literal('system-described'), facts: SystemStatementSchema },
  reading: {
    kind: v.literal('reading'),
    what: v.picklist(READING_IDS),
    value: typed('As typed, with its unit: 118 psig, -3 °C'),
    instrument: v.exactOptional(InstrumentSchema),
  },
  observation: {
    kind: v.literal('observation'),
    what: v.picklist(OBSERVATION_IDS),
    answer: typed('One of the answers of this observation'),
  },
  'refrigerant-moved': {
    kind: v.literal('refrigerant-moved'),
    direction: v.picklist(['into-system', 'out-of-system']),
    mass: typed('By the scale, with its unit: 6.25 oz'),
    phase: v.picklist(['liquid', 'vapour']),
    port: v.picklist(['suction', 'discharge', 'liquid-line', 'receiver']),
    compressor: v.picklist(['running', 'stopped']),
    refrigerant: v.exactOptional(Typed),
    cylinder: v.exactOptional(Typed),
    cylinderBefore: v.exactOptional(typed('The whole cylinder on the scale, before')),
    cylinderAfter: v.exactOptional(typed('The same, after')),
    hoses: v.exactOptional(typed('What the hoses kept on the way')),
    instrument: v.exactOptional(InstrumentSchema),
  },
  'cylinder-weighed': {
    kind: v.literal('cylinder-weighed'),
    cylinder: typed('Its mark'),
    refrigerant: Typed,
    holds: v.pipe(
      v.picklist(['new', 'recovered']),
      v.description('New as bought or reclaimed, or recovered from a system; the two never share a cylinder'),
    ),
    refillable: v.pipe(v.boolean(), v.description('False for one that was sold filled and may only be emptied')),
    tare: typed('Stamped TW: the empty cylinder with its valve, with its unit'),
    waterCapacity: typed('Stamped WC: the water that would fill it, with its unit'),
    gross: typed('The whole cylinder on the scale, with its unit'),
  },
  'weighing-gear': {
    kind: v.literal('weighing-gear'),
    scaleStep: v.exactOptional(typed('Smallest step of the scale, with its unit: 0.5 oz')),
    hoseLength: v.exactOptional(typed('Of the charging hose, with its unit: 60 in')),
    hoseInside: v.exactOptional(typed('Its diameter inside, with its unit: 0.2 in')),
    cylinderTemperature: v.exactOptional(typed('Of the liquid in a charging cylinder, with its unit: 85 °F')),
    graduatedFor: v.exactOptional(typed('The temperature that its graduation is for, with its unit: 70 °F')),
  },
  'supply-measured': {
    kind: v.literal('supply-measured'),
    voltages: v.pipe(
      v.array(Typed),
      v.minLength(1),
      v.maxLength(3),
      v.description('Under load, each with its unit: one, or three between phases'),
    ),
    nominal: typed('Of the nameplate, with its unit: 460 V'),
  },
  adjustment: { kind: v.literal('adjustment'), what: Prose },
  wait: {
    kind: v.literal('wait'),
    purpose: v.picklist(['settle', 'equalise']),
    duration: typed('With its unit: 15 min'),
    ends: v.exactOptional(
      v.pipe(
        v.string(),
        v.isoTimestamp(),
        v.description('Set while the wait only begins: when it is over by the clock of the device that began it'),
      ),
    ),
  },
  'vacuum-test': {
    kind: v.literal('vacuum-test'),
    criterion: v.pipe(
      v.picklist(['specification', 'habit', 'maker']),
      v.description('How the shut-off vacuum must hold; the maker’s own stands in start, limit and hold'),
    ),
    start: v.exactOptional(typed('The maker’s own: pulled down to: 300 micron, 40 Pa')),
    limit: v.exactOptional(typed('The maker’s own: not to rise above')),
    hold: v.exactOptional(typed('The maker’s own: for so long: 1 h')),
    resolution: v.exactOptional(typed('Last digit of the vacuum gauge: 1 micron')),
    coldestSpot: v.exactOptional(typed('Temperature of the coldest part, where ice would not show: 50 °F')),
  },
  'vacuum-reading': {
    kind: v.literal('vacuum-reading'),
    after: typed('Time since the valve to the pump was shut, with its unit: 5 min'),
    pressure: typed('As the vacuum gauge shows it, with its unit: 310 micron, 41 Pa'),
  },
  'vacuum-log': {
    kind: v.literal('vacuum-log'),
    text: v.pipe(
      v.string(),
      v.nonEmpty(),
      v.maxLength(500_000),
      v.description('Log of the vacuum gauge from the shutting of the valve on: a line each, time and pressure'),
    ),
    unit: v.exactOptional(typed('Of bare numbers, where no heading names one: micron, Pa')),
  },
  'pressure-test': {
    kind: v.literal('pressure-test'),
    gas: v.pipe(v.literal('nitrogen'), v.description('Dry, from a regulator; nothing else may be used')),
    gauge: v.exactOptional(InstrumentSchema),
    thermometer: v.exactOptional(InstrumentSchema),
  },
  'pressure-test-reading': {
    kind: v.literal('pressure-test-reading'),
    after: typed('Time since the first reading of the test, with its unit: 0 min, 24 h'),
    pressure: typed('As typed, with its unit: 300 psig'),
    temperature: typed('Of the gas, best on the pipe in the shade: 72 °F'),
  },
  'lessons-forgotten': {
    kind: v.literal('lessons-forgotten'),
    visits: v.pipe(
      v.array(Identifier),
      v.minLength(1),
      v.maxLength(MOST_VISITS),
      v.description('Visits to this system: what they taught of it counts for none that is not among them'),
    ),
  },
  'visit-moved': {
    kind: v.literal('visit-moved'),
    from: v.pipe(Identifier, v.description('The system that the visit was taken to be at')),
    to: v.pipe(Identifier, v.description('The one that it was made at')),
    name: v.exactOptional(typed('What that one was called then')),
  },
  photo: { kind: v.literal('photo'), subject: Prose, file: typed('Name of the file that is kept beside the visit') },
  note: { kind: v.literal('note'), text: Prose },
} as const

/** What a correction may put in the place of an earlier fact. */
export const FactSchema = v.variant('kind', [
  v.strictObject(FACTS['system-described']),
  v.strictObject(FACTS.reading),
  v.strictObject(FACTS.observation),
  v.strictObject(FACTS['refrigerant-moved']),
  v.strictObject(FACTS['cylinder-weighed']),
  v.strictObject(FACTS['weighing-gear']),
  v.strictObject(FACTS['supply-measured']),
  v.strictObject(FACTS.adjustment),
  v.strictObject(FACTS.wait),
  v.strictObject(FACTS['vacuum-test']),
  v.strictObject(FACTS['vacuum-reading']),
  v.strictObject(FACTS['vacuum-log']),
  v.strictObject(FACTS['pressure-test']),
  v.strictObject(FACTS['pressure-test-reading']),
  v.strictObject(FACTS['lessons-forgotten']),
  v.strictObject(FACTS['visit-moved']),
  v.strictObject(FACTS.photo),
  v.strictObject(FACTS.note),
])

export type Fact = v.InferOutput<typeof FactSchema>
export type FactOf<Kind extends Fact['kind']> = Extract<Fact, { readonly kind: Kind }>
export type Instrument = v.InferOutput<typeof InstrumentSchema>

const HEAD = {
  id: v.pipe(Identifier, v.description('Never used again, in this visit or another')),
  at: v.pipe(v.string(), v.isoTimestamp(), v.description('Time of entry as the device told it; it sets no order')),
  by: v.exactOptional(typed('Who entered it')),
}

/**
 * One event: a fact or a correction. Events are only ever appended; their order in the file is the order in which they
 * happened, whatever the clock said.
 */
export const EventSchema = v.variant('kind', [
  v.strictObject({ ...HEAD, ...FACTS['system-described'] }),
  v.strictObject({ ...HEAD, ...FACTS.reading }),
  v.strictObject({ ...HEAD, ...FACTS.observation }),
  v.strictObject({ ...HEAD, ...FACTS['refrigerant-moved'] }),
  v.strictObject({ ...HEAD, ...FACTS['cylinder-weighed'] }),
  v.strictObject({ ...HEAD, ...FACTS['weighing-gear'] }),
  v.strictObject({ ...HEAD, ...FACTS['supply-measured'] }),
  v.strictObject({ ...HEAD, ...FACTS.adjustment }),
  v.strictObject({ ...HEAD, ...FACTS.wait }),
  v.strictObject({ ...HEAD, ...FACTS['vacuum-test'] }),
  v.strictObject({ ...HEAD, ...FACTS['vacuum-reading'] }),
  v.strictObject({ ...HEAD, ...FACTS['vacuum-log'] }),
  v.strictObject({ ...HEAD, ...FACTS['pressure-test'] }),
  v.strictObject({ ...HEAD, ...FACTS['pressure-test-reading'] }),
  v.strictObject({ ...HEAD, ...FACTS['lessons-forgotten'] }),
  v.strictObject({ ...HEAD, ...FACTS['visit-moved'] }),
  v.strictObject({ ...HEAD, ...FACTS.photo }),
  v.strictObject({ ...HEAD, ...FACTS.note }),
  v.strictObject({
    ...HEAD,
    kind: v.literal('correction'),
    corrects: v.pipe(Identifier, v.description('Id of the earlier event that this one corrects')),
    replacement: v.exactOptional(FactSchema),
    reason: v.exactOptional(Prose),
  }),
])

export type VisitEvent = v.InferOutput<typeof EventSchema>
export type EventOf<Kind extends VisitEvent['kind']> = Extract<VisitEvent, { readonly kind: Kind }>
