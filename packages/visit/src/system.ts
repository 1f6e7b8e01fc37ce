import type { Dimension } from '@chargewright/quantity'
import * as v from 'valibot'
import { Typed } from './text.ts'

/** Metering devices, by how they set the flow. */
export const METERING_DEVICES = {
  thermostatic: 'thermostatic valve',
  electronic: 'electronic valve',
  automatic: 'automatic (constant-pressure) valve',
  capillary: 'capillary tube',
  'fixed-orifice': 'fixed orifice',
} as const

export type MeteringDevice = keyof typeof METERING_DEVICES

export const APPLICATIONS = {
  'comfort-cooling': 'comfort cooling',
  'heat-pump-cooling': 'heat pump, cooling',
  'medium-temperature': 'medium-temperature refrigeration',
  'low-temperature': 'low-temperature refrigeration',
} as const

export type Application = keyof typeof APPLICATIONS

/** One figure of the nameplate, the installation or the site that is typed with its unit. */
export interface FigureKind {
  readonly label: string
  readonly accepts: readonly Dimension[]
  readonly example: string
  /** The example for who works in metric units, where it is another. */
  readonly metric?: string
}

/** Every typed figure that describes a system. */
export const FIGURES = {
  nominalCapacity: { label: 'Nominal capacity', accepts: ['cooling capacity'], example: '3 ton', metric: '10 kW' },
  ratedPower: { label: 'Rated power, fans included', accepts: ['power'], example: '3.2 kW' },
  nameplateCharge: { label: 'Nameplate charge', accepts: ['mass'], example: '6 lb 4 oz', metric: '2800 g' },
  nameplateSubcooling: {
    label: 'Nameplate subcooling',
    accepts: ['temperature difference'],
    example: '10 °F',
    metric: '6 K',
  },
  valveSuperheatMin: {
    label: 'Valve superheat, from',
    accepts: ['temperature difference'],
    example: '4 °F',
    metric: '2 K',
  },
  valveSuperheatMax: {
    label: 'Valve superheat, to',
    accepts: ['temperature difference'],
    example: '25 °F',
    metric: '14 K',
  },
  lineLength: { label: 'Line length', accepts: ['length'], example: '40 ft', metric: '12 m' },
  includedLineLength: {
    label: 'Line length the nameplate includes',
    accepts: ['length'],
    example: '15 ft',
    metric: '5 m',
  },
  lineChargePerLength: {
    label: 'Charge per length of line',
    accepts: ['mass per length'],
    example: '0.6 oz/ft',
    metric: '55 g/m',
  },
  oldDrierVolume: { label: 'Inside volume of the old drier', accepts: ['volume'], example: '8 in³', metric: '130 cm³' },
  newDrierVolume: {
    label: 'Inside volume of the new drier',
    accepts: ['volume'],
    example: '16 in³',
    metric: '260 cm³',
  },
  receiverVolume: {
    label: 'Inside volume of the receiver',
    accepts: ['volume'],
    example: '300 in³',
    metric: '5000 cm³',
  },
  floodingCharge: { label: 'Charge for head-pressure control', accepts: ['mass'], example: '3 lb', metric: '1400 g' },
  condenserVolume: {
    label: 'Inside volume of the condenser',
    accepts: ['volume'],
    example: '400 in³',
    metric: '6500 cm³',
  },
  condenserDesignDifference: {
    label: 'Design condensing above entering air',
    accepts: ['temperature difference'],
    example: '20 °F',
    metric: '11 K',
  },
  heldCondensing: {
    label: 'Condensing temperature held in the cold',
    accepts: ['temperature'],
    example: '90 °F',
    metric: '32 °C',
  },
  lowestAmbient: {
    label: 'Lowest outdoor temperature in operation',
    accepts: ['temperature'],
    example: '0 °F',
    metric: '-20 °C',
  },
  boxSetPoint: { label: 'Box set point', accepts: ['temperature'], example: '38 °F', metric: '3 °C' },
  ratedLoadCurrent: { label: 'Rated-load current', accepts: ['current'], example: '14.1 A' },
  elevation: { label: 'Site elevation', accepts: ['elevation'], example: '1200 ft', metric: '400 m' },
  atmosphericPressure: { label: 'Atmospheric pressure', accepts: ['absolute pressure'], example: '101.3 kPa a' },
} as const satisfies Readonly<Record<string, FigureKind>>

export type FigureId = keyof typeof FIGURES

export const FIGURE_IDS = Object.keys(FIGURES) as readonly FigureId[]

export const figureKind = (id: FigureId): FigureKind => FIGURES[id]

// JSON can hold 1e999, which reads as infinity: it is no temperature.
const Finite = v.pipe(v.number(), v.finite())
/** Rows or columns of a printed chart, with room to spare. */
const CHART_SIDE = 200
const Temperatures = v.pipe(v.array(Finite), v.maxLength(CHART_SIDE))

/**
 * A maker's charging chart as entered by the technician: superheat against outdoor dry bulb and indoor wet or dry
 * bulb. Either as a grid (a row per outdoor temperature) or as CSV with the indoor temperatures in the first line and
 * the outdoor ones in the first column. An empty cell means the maker gives no value there.
 */
export const MakersChartSchema = v.variant('form', [
  v.strictObject({
    form: v.literal('grid'),
    indoor: v.picklist(['wet-bulb', 'dry-bulb']),
    unit: v.picklist(['°F', '°C']),
    outdoorTemperatures: Temperatures,
    indoorTemperatures: Temperatures,
    superheat: v.pipe(
      v.array(v.pipe(v.array(v.nullable(Finite)), v.maxLength(CHART_SIDE))),
      v.maxLength(CHART_SIDE),
      v.description('A row per outdoor temperature; null where the maker gives no value'),
    ),
  }),
  v.strictObject({
    form: v.literal('csv'),
    indoor: v.picklist(['wet-bulb', 'dry-bulb']),
    unit: v.picklist(['°F', '°C']),
    csv: v.pipe(
      v.string(),
      v.maxLength(100_000),
      v.description('Indoor temperatures in the first line, outdoor ones in the first column'),
    ),
  }),
])

export type MakersChart = v.InferOutput<typeof MakersChartSchema>

/** A part that was added to the system and fills with refrigerant: a receiver, an accumulator, a heat exchanger. */
const AccessorySchema = v.strictObject({
  name: Typed,
  volume: v.pipe(Typed, v.description('Inside, with its unit: 90 in³')),
  liquidPercent: v.pipe(
    v.number(),
    v.minValue(0),
    v.maxValue(100),
    v.description('Share of the volume that stands full of liquid while the system runs'),
  ),
})

/** A field of the description: absent where nothing is said, null where an earlier statement is taken back. */
const stated = <Schema extends v.GenericSchema>(schema: Schema) => v.exactOptional(v.nullable(schema))

const figureEntries = Object.fromEntries(
  FIGURE_IDS.map((id) => {
    const { label, example } = figureKind(id)
    return [id, stated(v.pipe(Typed, v.title(label), v.examples([example])))]
  }),
) as unknown as Readonly<Record<FigureId, ReturnType<typeof stated<typeof Typed>>>>

/** What is said of a system at one time, as typed. Everything may be missing: a form is filled in as the walk goes. */
export const SystemStatementSchema = v.strictObject({
  name: stated(Typed),
  refrigerant: stated(Typed),
  meteringDevice: stated(v.picklist(Object.keys(METERING_DEVICES) as MeteringDevice[])),
  application: stated(v.picklist(Object.keys(APPLICATIONS) as Application[])),
  receiver: stated(v.boolean()),
  sightGlass: stated(v.boolean()),
  accumulator: stated(v.boolean()),
  /** Outside diameter of the liquid line as it is called, in inches: `3/8`, `1-1/8`. */
  liquidLineTube: stated(Typed),
  makersChart: stated(MakersChartSchema),
  /** The maker’s coefficients of the compressor as CSV, with their units in its heading. */
  compressorRating: stated(v.pipe(v.string(), v.nonEmpty(), v.maxLength(100_000))),
  accessories: stated(v.pipe(v.array(AccessorySchema), v.maxLength(20))),
  ...figureEntries,
})

export type SystemStatement = v.InferOutput<typeof SystemStatementSchema>

/** What is known of a system after all statements. */
export type SystemFacts = { readonly [Name in keyof SystemStatement]: Exclude<SystemStatement[Name], null> }
