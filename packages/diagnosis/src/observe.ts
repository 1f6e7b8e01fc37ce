import type { Properties } from '@chargewright/cycle'
import type { Errors, Instruments } from './instruments.ts'
import { OBSERVABLE_NAMES, type Observable } from './observable.ts'
import type { ReadingSet } from './reading-set.ts'

export const COUNT = OBSERVABLE_NAMES.length
export const AT = Object.fromEntries(OBSERVABLE_NAMES.map((name, i) => [name, i])) as Readonly<
  Record<Observable, number>
>

/** The observables of one set of readings, and how each instrument moves them. */
export interface Observed {
  /** In the order of `OBSERVABLE_NAMES`; not a number where it was not read. */
  readonly values: Float64Array
  readonly sensors: readonly Sensor[]
}

/** One instrument at one place: its errors, and what one unit of error does to each observable. */
export interface Sensor {
  /** Sets of one visit that name the same sensor share its error of the visit. */
  readonly name: string
  readonly errors: Errors
  readonly moves: readonly (readonly [Observable, number])[]
}

/**
 * Reduces readings to observables. Errors of the weather's readings are no matter of this: what they do depends on the
 * state, so they are unknowns of the visit (see `nuisance.ts`).
 */
export function observe(properties: Properties, read: ReadingSet, instruments: Instruments): Observed {
  const values = new Float64Array(COUNT).fill(Number.NaN)
  const sensors: Sensor[] = []
  const { pipe_K, air_K } = instruments
  const clamp = (pipe: number): Errors => {
    const pull = instruments.clampPull * (read.outdoor_K - pipe)
    return { visit: Math.hypot(pipe_K.visit, pull), reading: pipe_K.reading }
  }
  const set = (name: Observable, value: number) => {
    values[AT[name]] = value
  }

  const { suctionPressure_Pa: low, suctionLine_K, liquidPressure_Pa: high, liquidLine_K } = read
  if (low !== undefined) {
    const dew = properties.saturated(low).dew_K
    const slope = (properties.saturated(low * SLIGHTLY).dew_K - dew) / (low * (SLIGHTLY - 1))
    set('evaporating', dew)
    const moves: [Observable, number][] = [['evaporating', slope]]
    if (suctionLine_K !== undefined) {
      set('superheat', suctionLine_K - dew)
      moves.push(['superheat', -slope])
      sensors.push({ name: 'suction clamp', errors: clamp(suctionLine_K), moves: [['superheat', 1]] })
    }
    sensors.push({ name: 'suction gauge', errors: instruments.suctionGauge_Pa, moves })
  }
  if (high !== undefined) {
    const bubble = properties.saturated(high).bubble_K
    const slope = (properties.saturated(high * SLIGHTLY).bubble_K - bubble) / (high * (SLIGHTLY - 1))
    set('condensing', bubble)
    const moves: [Observable, number][] = [['condensing', slope]]
    if (liquidLine_K !== undefined) {
      set('subcooling', bubble - liquidLine_K)
      moves.push(['subcooling', slope])
      sensors.push({ name: 'liquid clamp', errors: clamp(liquidLine_K), moves: [['subcooling', -1]] })
    }
    sensors.push({ name: 'liquid gauge', errors: instruments.liquidGauge_Pa, moves })
  }
  if (read.dischargeLine_K !== undefined) {
    set('discharge', read.dischargeLine_K)
    sensors.push({ name: 'discharge clamp', errors: clamp(read.dischargeLine_K), moves: [['discharge', 1]] })
  }
  if (read.condenserLeavingAir_K !== undefined) {
    set('condenserAirRise', read.condenserLeavingAir_K - read.outdoor_K)
    sensors.push({ name: 'leaving air', errors: air_K, moves: [['condenserAirRise', 1]] })
  }
  if (read.supplyAir_K !== undefined) {
    set('supplyAirDrop', read.returnAir_K - read.supplyAir_K)
    sensors.push({ name: 'supply air', errors: air_K, moves: [['supplyAirDrop', 1]] })
  }
  const metered: [Observable, number][] = []
  if (read.compressorPower_W !== undefined) {
    set('compressorPower', Math.log(read.compressorPower_W))
    metered.push(['compressorPower', 1])
  }
  if (read.power_W !== undefined) {
    set('power', Math.log(read.power_W))
    metered.push(['power', 1])
  }
  if (metered.length > 0) sensors.push({ name: 'power meter', errors: instruments.power, moves: metered })
  if (read.drierInlet_K !== undefined && read.drierOutlet_K !== undefined) {
    set('drierDrop', read.drierInlet_K - read.drierOutlet_K)
    const two = { visit: pipe_K.visit, reading: Math.SQRT2 * pipe_K.reading }
    sensors.push({ name: 'drier clamps', errors: two, moves: [['drierDrop', 1]] })
  }
  if (read.standstill) {
    const { pressure_Pa, ambient_K } = read.standstill
    const at = properties.saturated(pressure_Pa)
    const glide = at.dew_K - at.bubble_K
    set('standstill', at.bubble_K + glide / 4 - ambient_K)
    const slope = (properties.saturated(pressure_Pa * SLIGHTLY).bubble_K - at.bubble_K) / (pressure_Pa * (SLIGHTLY - 1))
    sensors.push({ name: 'gauge at rest', errors: instruments.suctionGauge_Pa, moves: [['standstill', slope]] })
    const ambient = { visit: Math.hypot(air_K.visit, glide / 8), reading: air_K.reading }
    sensors.push({ name: 'ambient at rest', errors: ambient, moves: [['standstill', 1]] })
  }
  return { values, sensors }
}

const SLIGHTLY = 1.001
