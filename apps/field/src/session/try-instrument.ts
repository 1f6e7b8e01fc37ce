import { fail, ok, type Quantity, type Result } from '@chargewright/quantity'
import { type Fact, fold, type Instrument, type InstrumentId } from '@chargewright/visit'
import { problemInWords } from '../words/problem-in-words.ts'

/** A usual reading of each sort of instrument. */
const USUAL: Readonly<Record<InstrumentId, Fact>> = {
  'low-side-gauge': { kind: 'reading', what: 'suction-pressure', value: '120 psig' },
  'high-side-gauge': { kind: 'reading', what: 'liquid-pressure', value: '350 psig' },
  'pipe-thermometer': { kind: 'reading', what: 'suction-temperature', value: '55 °F' },
  'air-thermometer': { kind: 'reading', what: 'return-air-dry-bulb', value: '75 °F' },
  hygrometer: { kind: 'reading', what: 'return-air-humidity', value: '50 %' },
  'airflow-meter': { kind: 'reading', what: 'airflow', value: '1200 CFM' },
  'clamp-ammeter': { kind: 'reading', what: 'compressor-current', value: '12 A' },
  'power-meter': { kind: 'reading', what: 'compressor-power', value: '2500 W' },
  voltmeter: { kind: 'reading', what: 'supply-voltage', value: '240 V' },
  'charging-scale': {
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass: '8 oz',
    phase: 'vapour',
    port: 'suction',
    compressor: 'running',
  },
}

/** What a usual reading with an instrument would be, with its uncertainty; or what is wrong with the description. */
export function tryInstrument(id: InstrumentId, instrument: Instrument | undefined): Result<Quantity, string> {
  const fact = { ...USUAL[id], ...(instrument && { instrument }) } as Fact
  const { history, moves, problems } = fold({ id, events: [{ id, at: '1970-01-01T00:00:00Z', ...fact }] })
  const read = history[0]?.quantity ?? moves[0]?.mass
  return read ? ok(read) : fail(problems.map(({ problem }) => problemInWords(problem)).join('\n'))
}
