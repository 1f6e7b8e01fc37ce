import type { Dimension } from '@chargewright/quantity'
import * as v from 'valibot'

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
}

/** Every typed figure that describes a system. */
export const FIGURES = {
  nominalCapacity: { label: 'Nominal capacity', accepts: ['cooling capacity'], example: '3 ton' },
  nameplateCharge: { label: 'Nameplate charge', accepts: ['mass'], example: '6 lb 4 oz' },
  nameplateSubcooling: { label: 'Nameplate subcooling', accepts: ['temperature difference'], example: '10 °F' },
  valveSuperheatMin: { label: 'Valve superheat, from', accepts: ['temperature difference'], example: '4 °F' },
  valveSuperheatMax: { label: 'Valve superheat, to', accepts: ['temperature difference'], example: '25 °F' },
  lineLength: { label: 'Line length', accepts: ['length'], example: '40 ft' },
  includedLineLength: { label: 'Line length the nameplate includes', accepts: ['length'], example: '15 ft' },
  lineChargePerLength: { label: 'Charge per length of line', accepts: ['mass per length'], example: '0.6 oz/ft' },
  oldDrierVolume: { label: 'Inside volume of the old drier', accepts: ['volume'], example: '8 in³' },
  newDrierVolume: { label: 'Inside volume of the new drier', accepts: ['volume'], example: '16 in³' },
  floodingCharge: { label: 'Charge for head-pressure control', accepts: ['mass'], example: '3 lb' },
  boxSetPoint: { label: 'Box set point', accepts: ['temperature'], example: '38 °F' },
  ratedLoadCurrent: { label: 'Rated-load current', accepts: ['current'], example: '14.1 A' },
  elevation: { label: 'Site elevation', accepts: ['elevation'], example: '1200 ft' },
  atmosphericPressure: { label: 'Atmospheric pressure', accepts: ['absolute pressure'], example: '101.3 kPa a' },
} as const satisfies Readonly<Record<string, FigureKind>>

export type FigureId = keyof typeof FIGURES

export const FIGURE_IDS = Object.keys(FIGURES) as readonly FigureId[]

export const figureKind = (id: FigureId): FigureKind => FIGURES[id]

const Typed = v.pipe(v.string(), v.nonEmpty(), v.maxLength(200))
const Cell = v.nullable(v.number())

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
    outdoorTemperatures: v.array(v.number()),
    indoorTemperatures: v.array(v.number()),
    superheat: v.array(v.array(Cell)),
  }),
  v.strictObject({
    form: v.literal('csv'),
    indoor: v.picklist(['wet-bulb', 'dry-bulb']),
    unit: v.picklist(['°F', '°C']),
    csv: v.pipe(v.string(), v.maxLength(100_000)),
  }),
])

export type MakersChart = v.InferOutput<typeof MakersChartSchema>

const figureEntries = Object.fromEntries(FIGURE_IDS.map((id) => [id, v.exactOptional(Typed)])) as Record<
  FigureId,
  v.ExactOptionalSchema<typeof Typed, undefined>
>

/** What is known of a system, as typed. Everything may be missing: a form is filled in as the walk goes. */
export const SystemFactsSchema = v.strictObject({
  name: v.exactOptional(Typed),
  refrigerant: v.exactOptional(Typed),
  meteringDevice: v.exactOptional(v.picklist(Object.keys(METERING_DEVICES) as MeteringDevice[])),
  application: v.exactOptional(v.picklist(Object.keys(APPLICATIONS) as Application[])),
  receiver: v.exactOptional(v.boolean()),
  sightGlass: v.exactOptional(v.boolean()),
  accumulator: v.exactOptional(v.boolean()),
  makersChart: v.exactOptional(MakersChartSchema),
  ...figureEntries,
})

export type SystemFacts = v.InferOutput<typeof SystemFactsSchema>
