import fc from 'fast-check'
import { type Fact, OBSERVATION_IDS, observationKind, READING_IDS, type VisitEvent } from '../src/index.ts'
import { APPLICATIONS, FIGURE_IDS, figureKind, METERING_DEVICES } from '../src/system.ts'

const time = fc
  .date({ min: new Date('2020-01-01T00:00:00Z'), max: new Date('2040-01-01T00:00:00Z'), noInvalidDate: true })
  .map((date) => date.toISOString())

const keysOf = <T extends object>(record: T) => fc.constantFrom(...(Object.keys(record) as (keyof T)[]))
const text = (maxLength: number) => fc.string({ unit: 'binary', minLength: 1, maxLength })

/** What a person may type for a quantity: fit for the field, fit for another one, or nonsense. */
const typedQuantity = fc.oneof(
  fc.constantFrom(...FIGURE_IDS.map((id) => figureKind(id).example), '118 psig', '8,1 bar', '95 °F', '-40 °C', '55 %'),
  fc.constantFrom('1,234', '', 'about ten psi', '1e999 psi', '-1 oz', '3 ton 4 psi', '__proto__').map((t) => t || ' '),
  fc
    .tuple(fc.double({ noNaN: true }), fc.constantFrom('psig', '°F', 'K', 'oz', 'min', 'CFM', 'V', ''))
    .map((t) => t.join(' ')),
  text(200),
)

const instrument = fc.record(
  {
    name: text(200),
    accuracy: typedQuantity,
    class: fc.double({ min: 0, max: 10, noNaN: true }),
    span: typedQuantity,
    resolution: typedQuantity,
  },
  { requiredKeys: [] },
)

const temperatures = fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { maxLength: 4 })
const chartHead = {
  indoor: fc.constantFrom('wet-bulb' as const, 'dry-bulb' as const),
  unit: fc.constantFrom('°F' as const, '°C' as const),
}
const makersChart = fc.oneof(
  fc.record({
    form: fc.constant('grid' as const),
    ...chartHead,
    outdoorTemperatures: temperatures,
    indoorTemperatures: temperatures,
    superheat: fc.array(fc.array(fc.option(fc.double({ noNaN: true, noDefaultInfinity: true })), { maxLength: 4 }), {
      maxLength: 4,
    }),
  }),
  fc.record({ form: fc.constant('csv' as const), ...chartHead, csv: fc.string({ maxLength: 100 }) }),
)

const statement = fc.record(
  {
    name: fc.option(text(200)),
    refrigerant: fc.option(text(200)),
    meteringDevice: fc.option(keysOf(METERING_DEVICES)),
    application: fc.option(keysOf(APPLICATIONS)),
    receiver: fc.option(fc.boolean()),
    sightGlass: fc.option(fc.boolean()),
    accumulator: fc.option(fc.boolean()),
    makersChart: fc.option(makersChart),
    compressorRating: fc.option(text(200)),
    accessories: fc.option(
      fc.array(
        fc.record({
          name: text(50),
          volume: typedQuantity,
          liquidPercent: fc.double({ min: 0, max: 100, noNaN: true }),
        }),
        { maxLength: 3 },
      ),
    ),
    ...(Object.fromEntries(FIGURE_IDS.map((id) => [id, fc.option(typedQuantity)])) as object),
  },
  { requiredKeys: [] },
)

const observation = fc.constantFrom(...OBSERVATION_IDS).chain((what) =>
  fc.record({
    kind: fc.constant('observation' as const),
    what: fc.constant(what),
    answer: fc.oneof(fc.constantFrom(...Object.keys(observationKind(what).answers), 'toString'), text(200)),
  }),
)

/** Any fact that a visit file may hold, readable or not. */
export const anyFact: fc.Arbitrary<Fact> = fc.oneof(
  fc.record({ kind: fc.constant('system-described' as const), facts: statement }),
  fc.record(
    { kind: fc.constant('reading' as const), what: fc.constantFrom(...READING_IDS), value: typedQuantity, instrument },
    { requiredKeys: ['kind', 'what', 'value'] },
  ),
  observation,
  fc.record(
    {
      kind: fc.constant('refrigerant-moved' as const),
      direction: fc.constantFrom('into-system' as const, 'out-of-system' as const),
      mass: typedQuantity,
      phase: fc.constantFrom('liquid' as const, 'vapour' as const),
      port: fc.constantFrom('suction' as const, 'discharge' as const, 'liquid-line' as const, 'receiver' as const),
      compressor: fc.constantFrom('running' as const, 'stopped' as const),
      refrigerant: text(200),
      cylinder: text(200),
      cylinderBefore: typedQuantity,
      cylinderAfter: typedQuantity,
      hoses: typedQuantity,
      instrument,
    },
    { requiredKeys: ['kind', 'direction', 'mass', 'phase', 'port', 'compressor'] },
  ),
  fc.record(
    {
      kind: fc.constant('weighing-gear' as const),
      scaleStep: typedQuantity,
      hoseLength: typedQuantity,
      hoseInside: typedQuantity,
      cylinderTemperature: typedQuantity,
      graduatedFor: typedQuantity,
    },
    { requiredKeys: ['kind'] },
  ),
  fc.record({
    kind: fc.constant('supply-measured' as const),
    voltages: fc.array(typedQuantity, { minLength: 1, maxLength: 3 }),
    nominal: typedQuantity,
  }),
  fc.record({ kind: fc.constant('adjustment' as const), what: text(300) }),
  fc.record(
    {
      kind: fc.constant('wait' as const),
      purpose: fc.constantFrom('settle' as const, 'equalise' as const),
      duration: typedQuantity,
      ends: time,
    },
    { requiredKeys: ['kind', 'purpose', 'duration'] },
  ),
  fc.record(
    {
      kind: fc.constant('vacuum-test' as const),
      criterion: fc.constantFrom('specification' as const, 'habit' as const, 'maker' as const),
      start: typedQuantity,
      limit: typedQuantity,
      hold: typedQuantity,
      resolution: typedQuantity,
      coldestSpot: typedQuantity,
    },
    { requiredKeys: ['kind', 'criterion'] },
  ),
  fc.record({ kind: fc.constant('vacuum-reading' as const), after: typedQuantity, pressure: typedQuantity }),
  fc.record(
    { kind: fc.constant('vacuum-log' as const), text: text(300), unit: typedQuantity },
    { requiredKeys: ['kind', 'text'] },
  ),
  fc.record(
    {
      kind: fc.constant('pressure-test' as const),
      gas: fc.constant('nitrogen' as const),
      gauge: instrument,
      thermometer: instrument,
    },
    { requiredKeys: ['kind', 'gas'] },
  ),
  fc.record({
    kind: fc.constant('pressure-test-reading' as const),
    after: typedQuantity,
    pressure: typedQuantity,
    temperature: typedQuantity,
  }),
  fc.record({
    kind: fc.constant('cylinder-weighed' as const),
    cylinder: text(50),
    refrigerant: text(50),
    holds: fc.constantFrom('new' as const, 'recovered' as const),
    refillable: fc.boolean(),
    tare: typedQuantity,
    waterCapacity: typedQuantity,
    gross: typedQuantity,
  }),
  fc.record({
    kind: fc.constant('lessons-forgotten' as const),
    visits: fc.array(text(50), { minLength: 1, maxLength: 3 }),
  }),
  fc.record(
    { kind: fc.constant('visit-moved' as const), from: text(50), to: text(50), name: text(50) },
    { requiredKeys: ['kind', 'from', 'to'] },
  ),
  fc.record({ kind: fc.constant('photo' as const), subject: text(300), file: text(200) }),
  fc.record({ kind: fc.constant('note' as const), text: text(300) }),
)

/** An event to come: a fact, or a correction of whichever event stands at a share of the way through the list. */
const anyStep = fc.oneof(
  { weight: 3, arbitrary: fc.record({ at: time, fact: anyFact }) },
  {
    weight: 2,
    arbitrary: fc.record(
      { at: time, aim: fc.double({ min: 0, max: 1, noNaN: true }), replacement: anyFact, reason: text(50) },
      { requiredKeys: ['at', 'aim'] },
    ),
  },
)

/** Any list of events with ids e0, e1, …; most corrections aim at an earlier event, some at themselves or a later one. */
export const anyEvents: fc.Arbitrary<readonly VisitEvent[]> = fc.array(anyStep, { maxLength: 25 }).map((steps) =>
  steps.map((step, i): VisitEvent => {
    if ('fact' in step) return { id: `e${i}`, at: step.at, ...step.fact }
    const { aim, ...rest } = step
    return { id: `e${i}`, kind: 'correction', corrects: `e${Math.floor(aim * (i + 1.2))}`, ...rest }
  }),
)
