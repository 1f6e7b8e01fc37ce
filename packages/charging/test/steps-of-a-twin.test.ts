import { conditions, type Readings, SOUND, solve } from '@chargewright/cycle'
import type { Fact, SystemFacts, Visit } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { assess } from '../src/index.ts'
import { sizedSystem } from '../src/twin/sized-system.ts'
import { described, readings, settledNow, type Typed, visitOf } from './visit-of.ts'

const FACTS: SystemFacts = {
  refrigerant: 'R-410A',
  meteringDevice: 'fixed-orifice',
  application: 'comfort-cooling',
  nominalCapacity: '3 ton',
  nameplateCharge: '6 lb 8 oz',
}
const sized = sizedSystem(visitOf(described(FACTS)).system)
const weather = conditions(308.15, 299.82, 292.59)
if (!sized.ok || !weather.ok) throw new Error('no such system or weather')
const [system, at] = [sized.value, weather.value]

/** The visit to an invented system that reads as the model does, its charge brought from one share of the right one to the next. */
const visitTo = (shares: readonly number[]): Visit =>
  visitOf(
    described(FACTS),
    ...shares.map((share, i) => [
      ...(i === 0 ? [] : [moved(share - shares[i - 1]!)]),
      SETTLE,
      settledNow,
      ...readings(typed(share)),
    ]),
  )

const SETTLE: Fact = { kind: 'wait', purpose: 'settle', duration: '15 min' }

function moved(share: number): Fact {
  const into = share > 0
  return {
    kind: 'refrigerant-moved',
    direction: into ? 'into-system' : 'out-of-system',
    mass: `${(Math.abs(share) * 104).toFixed(1)} oz`,
    phase: into ? 'vapour' : 'liquid',
    port: into ? 'suction' : 'liquid-line',
    compressor: 'running',
    refrigerant: 'R-410A',
    cylinder: 'invented',
  }
}

function typed(share: number): Typed {
  const read = readingsAt(share)
  const celsius = (T: number) => `${(T - 273.15).toFixed(1)} °C`
  const bar = (p: number) => `${((p - 101325) / 1e5).toFixed(2)} bar`
  return {
    'return-air-dry-bulb': celsius(299.82),
    'return-air-wet-bulb': celsius(292.59),
    airflow: '1180 CFM',
    'condenser-entering-air': celsius(308.15),
    'suction-pressure': bar(read.suctionPressure_Pa),
    'suction-temperature': celsius(read.suctionTemperature_K),
    'liquid-pressure': bar(read.liquidPressure_Pa),
    'liquid-temperature': celsius(read.liquidTemperature_K),
    'discharge-temperature': celsius(read.dischargeTemperature_K),
    'supply-air-dry-bulb': celsius(read.supplyAir_K),
    'condenser-leaving-air': celsius(read.leavingCondenserAir_K),
    'compressor-power': `${read.compressorPower_W.toFixed(0)} W`,
  }
}

function readingsAt(share: number): Readings {
  const solution = solve(system, at, { ...SOUND, charge_kg: share * system.rated.charge_kg })
  if (solution.kind !== 'steady') throw new Error(`no steady state at ${share}`)
  return solution.readings
}

describe('a system that reads as its model, step by step', () => {
  test.each([
    [[0.7], 'add'],
    [[0.7, 0.85], 'add'],
    [[0.7, 0.85, 0.98], 'hold'],
    [[0.7, 0.85, 1.2], 'recover'],
    [[1.25, 1.1, 1], 'hold'],
    [[1.25, 1.1, 0.8], 'add'],
  ] as const)('[property] with its charge brought to %j of the right one it is told to %s', (shares, finding) => {
    expect(assess(visitTo(shares)).finding.kind).toBe(finding)
  })
})
