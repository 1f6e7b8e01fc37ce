import {
  type BenchAct,
  type BenchAnswer,
  type BenchRequest,
  type BenchStart,
  benchSession,
  chargingChart,
  gaugeReadings,
  PRACTICE_PLATE,
  soundHealth,
  targetsSuperheat,
} from '@chargewright/cycle'
import { fail, ok, type Problem, type Quantity, quantity, type Result, type Statement } from '@chargewright/quantity'
import type { MakersChart, ReadingId, SystemStatement } from '@chargewright/visit'
import type { Run } from './run.ts'

export type Case = Pick<Run, 'seed' | 'device'>

/** One instrument of the bench as it reads now. */
export interface BenchInstrument {
  readonly label: string
  readonly quantity: Quantity
  /** The reading it is, where a visit has one for it. */
  readonly what?: ReadingId
}

/** The bench as it stands after some requests: plain data, to cross from the thread that computes it. */
export interface Practised {
  readonly clock_s: number
  readonly isRunning: boolean
  readonly hasStem: boolean
  readonly instruments: readonly BenchInstrument[]
  readonly cylinder: { readonly held: Quantity<'mass'>; readonly most: Quantity<'mass'> }
  /** Only once the run is over. */
  readonly debrief?: { readonly statements: readonly Statement[]; readonly acts: readonly BenchAct[] }
}

/** Does everything that was asked of a case, in order. Refuses only what cannot be done: the last request, if any. */
export function practised(
  { seed, device }: Case,
  requests: readonly BenchRequest[],
): Result<Practised, readonly Problem[]> {
  const session = benchSession(seed, device)
  if (!session.ok) return session
  const { start, answer } = session.value
  let last: BenchAnswer | undefined
  for (const request of requests) {
    const answered = answer(request)
    if (!answered.ok) return fail([answered.error])
    last = answered.value
  }
  const over = last?.kind === 'debrief' ? last : undefined
  const seen = over ? undefined : answer({ kind: 'look' })
  if (seen && !seen.ok) return fail([seen.error])
  const look = seen?.value.kind === 'look' ? seen.value : undefined
  const practice = look?.practice ?? over?.practice
  if (!practice) return fail([{ kind: 'unknown', field: 'bench', value: 'state', accepted: 'a look or a debrief' }])
  return ok({
    clock_s: practice.clock_s,
    isRunning: practice.isRunning,
    hasStem: start.device === 'thermostatic',
    instruments: look ? instrumentsOf(look, start) : [],
    cylinder: { held: mass(practice.cylinder.held_kg), most: mass(practice.cylinder.most_kg) },
    ...(over ? { debrief: { statements: over.debrief.statements, acts: over.acts } } : {}),
  })
}

const mass = (kg: number): Quantity<'mass'> => quantity('mass', kg)

/** The readings of a visit, by the instruments of the bench. */
const READINGS: Readonly<Record<string, ReadingId>> = {
  suction_pressure: 'suction-pressure',
  suction_temperature: 'suction-temperature',
  liquid_pressure: 'liquid-pressure',
  liquid_temperature: 'liquid-temperature',
  discharge_temperature: 'discharge-temperature',
  supply_air: 'supply-air-dry-bulb',
  leaving_condenser_air: 'condenser-leaving-air',
  compressor_power: 'compressor-power',
}

/** What would be worked out from two instruments, and is left to the visit. */
const DERIVED = ['superheat', 'subcooling']

function instrumentsOf(
  { practice, readings }: Extract<BenchAnswer, { kind: 'look' | 'wait' }>,
  { system }: BenchStart,
): readonly BenchInstrument[] {
  const { outdoor, indoor } = practice.conditions
  const gauges = gaugeReadings(readings, system)
    .filter(({ name }) => !DERIVED.includes(name))
    .map(({ name, label, dimension, si }): BenchInstrument => {
      const isPressure = dimension === 'absolute pressure'
      const read = isPressure ? quantity('gauge pressure', si - indoor.pressure_Pa) : quantity(dimension, si)
      const what = READINGS[name]
      return { label, quantity: read, ...(what ? { what } : {}) }
    })
  const air = (label: string, si: number, what: ReadingId): BenchInstrument => ({
    label,
    quantity: quantity('temperature', si),
    what,
  })
  return [
    air('Return air', indoor.dryBulb_K, 'return-air-dry-bulb'),
    air('Return air, wet bulb', indoor.wetBulb_K, 'return-air-wet-bulb'),
    air('Outdoor air', outdoor.dryBulb_K, 'condenser-entering-air'),
    ...gauges,
  ]
}

/** What stands on the plate and the panel of a case: its target as a chart of superheat, or as a subcooling. */
export function plateOf({ seed, device }: Case): Result<SystemStatement, readonly Problem[]> {
  const session = benchSession(seed, device)
  if (!session.ok) return session
  const { start } = session.value
  const plate: SystemStatement = { ...PRACTICE_PLATE, meteringDevice: device }
  if (start.target_K === undefined) return ok(plate)
  if (!targetsSuperheat(start.system)) return ok({ ...plate, nameplateSubcooling: `${start.target_K.toFixed(1)} K` })
  const chart = chartOf(start)
  return chart.ok ? ok({ ...plate, makersChart: chart.value }) : fail([chart.error])
}

const OUTDOOR_F = [75, 80, 85, 90, 95, 100, 105]
const WET_BULB_F = [58, 60, 62, 64, 66, 68, 70, 72, 74]

function chartOf({ system }: BenchStart): Result<MakersChart, Problem> {
  const kelvin = (F: number) => (F + 459.67) / 1.8
  const found = chargingChart(
    system,
    soundHealth(system),
    'superheat_K',
    { kind: 'wet-bulb' },
    OUTDOOR_F.map(kelvin),
    WET_BULB_F.map(kelvin),
  )
  if (!found.ok) return found
  const superheat = found.value.cells.map((row) =>
    row.map((cell) => (cell.kind === 'target' ? Math.round(18 * cell.value_K) / 10 : null)),
  )
  return ok({
    form: 'grid',
    indoor: 'wet-bulb',
    unit: '°F',
    outdoorTemperatures: OUTDOOR_F,
    indoorTemperatures: WET_BULB_F,
    superheat,
  })
}
