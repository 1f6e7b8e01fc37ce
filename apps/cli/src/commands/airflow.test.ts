import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type AirflowAnswer, airflowByDrop, airflowByFan, airflowByHeat } from './airflow.ts'
import { airflowJson } from './airflow-json.ts'
import { airflowText, traversePointsText } from './airflow-text.ts'
import { airflowAcross, traverseHere } from './airflow-traverse.ts'

const CFM = 0.3048 ** 3 / 60
type Answered = ReturnType<typeof airflowByHeat>

function found(answer: Answered): AirflowAnswer {
  if (!answer.ok) throw new Error(answer.error.map(({ field }) => field).join())
  return answer.value
}
const cfm = (answer: Answered) => found(answer).airflow.airflow.si / CFM

const HEAT = { volts: '240 V', amps: '28 A', rise: '21 degF', phases: '1' } as const

describe('airflow by heat', () => {
  // COMPUTED by the classic formula of the trade, CFM = W · 3.412/(1.08 · Δt) = 6720 · 3.412/(1.08 · 21), which is that
  // of standard air with 1.08 rounded from 1.085: 1 % is its own tolerance.
  test('[oracle] standard air is that of the classic formula', () => {
    const { standardAirflow } = found(airflowByHeat(HEAT)).airflow
    expect(standardAirflow.si / CFM / ((6720 * 3.412) / (1.08 * 21))).toBeCloseTo(1, 1.7)
  })

  test('[property] thin air takes more volume for the same heat', () => {
    expect(cfm(airflowByHeat({ ...HEAT, altitude: '5000 ft' }))).toBeGreaterThan(1.15 * cfm(airflowByHeat(HEAT)))
  })

  test('[property] three phases carry √3 times the power', () => {
    const ratio = cfm(airflowByHeat({ ...HEAT, phases: '3' })) / cfm(airflowByHeat(HEAT))
    expect(ratio).toBeCloseTo(Math.sqrt(3), 9)
  })

  test('[property] over the capacity it is told beside what is usual, with the reading for a visit file', () => {
    const answer = found(airflowByHeat({ ...HEAT, tons: '3 ton' }))
    expect(airflowText(answer, INCH_POUND, 80)).toMatch(/usual are 360 CFM per ton to 440\s+CFM/)
    expect(airflowJson(answer, INCH_POUND)).toMatchObject({
      reading: { what: 'airflow', value: expect.stringMatching(/^\d+ CFM$/) },
      airflow_per_capacity_m3_sW: expect.closeTo(answer.airflow.airflow.si / 10_550.6, 6),
    })
  })

  // COMPUTED from the bands: below 300 CFM per ton (RA3.2, 2008, READ) no charge is judged; 400 CFM ± 10 % is usual.
  test.each([
    ['3 ton', 'met', 'airflow in range'],
    ['2.4 ton', 'doubtful', 'airflow out of range'],
    ['3.5 ton', 'doubtful', 'airflow out of range'],
    ['5 ton', 'unmet', 'too little airflow'],
  ])('[oracle] 1180 CFM over %s is %s, in the page and in JSON', (tons, state, words) => {
    const table = 'CFM,inH2O\n1180,0.1\n1380,0.14\n'
    const answer = found(airflowByDrop(table, { drop: '0.1 inH2O', air: '70 degF', humidity: '0 %', tons }))
    expect(airflowText(answer, INCH_POUND, 80)).toMatch(new RegExp(`^${words}  `))
    expect(airflowJson(answer, INCH_POUND)).toMatchObject({ per_capacity: { state } })
  })

  test('[limit] every flag that cannot be read is told at once', () => {
    const refused = airflowByHeat({ ...HEAT, volts: '240', rise: 'hot', altitude: '3', tons: 'x' })
    expect(refused.ok ? [] : refused.error.map(({ field }) => field)).toEqual(['volts', 'rise', 'altitude', 'tons'])
    expect(airflowByHeat({ ...HEAT, tons: '0 ton' })).toMatchObject({
      error: [{ kind: 'out-of-range', field: 'tons' }],
    })
  })
})

describe('airflow by traverse', () => {
  const SQUARE = { width: '1 ft', height: '1 ft', in: 'ft/min' } as const

  test('[property] an even 500 ft/min through a square foot is 500 CFM', () => {
    expect(cfm(airflowAcross(Array(25).fill('500'), SQUARE))).toBeCloseTo(500, 6)
    expect(cfm(airflowAcross(Array(25).fill('2.54'), { ...SQUARE, in: 'm/s' }))).toBeCloseTo(500, 6)
  })

  // V = 1096.7 √(p/ρ) (ASHRAE and AMCA practice, REMEMBERED): 0.0625 inH2O of air of 0.075 lb/ft³ is 1001 ft/min.
  test('[published] a velocity pressure of a sixteenth of an inch of standard air is 1001 ft/min', () => {
    const dry = { air: '70 degF', humidity: '0 %' }
    const answer = airflowAcross(Array(25).fill('0.0625'), { ...SQUARE, ...dry, in: 'inH2O' })
    expect(cfm(answer) / 1001).toBeCloseTo(1, 2.3)
  })

  test('[property] without readings it tells where to hold the probe', () => {
    const points = traverseHere({ width: '20 in', height: '12 in' })
    if (!points.ok) throw new Error('no points')
    expect(traversePointsText(points.value, INCH_POUND, 80)).toContain('1.480 in, 5.760 in, 10.000 in')
    expect(traversePointsText(points.value, METRIC, 80)).toContain('37.6 mm')
    expect(traverseHere({ diameter: '10 in', width: '3 in' })).toMatchObject({ error: [{ kind: 'missing' }] })
  })

  test('[limit] a reading that is no number is named by its place', () => {
    expect(airflowAcross(['500', '5OO'], SQUARE)).toMatchObject({ error: [{ field: 'reading 2', value: '5OO' }] })
  })
})

describe('airflow by a maker’s table', () => {
  const DROPS = 'CFM,inH2O\n800,0.09\n1000,0.14\n1200,0.20\n'
  const AIR = { air: '70 degF', humidity: '0 %' }

  test('[property] an entry of the table is itself, in air of standard density', () => {
    expect(cfm(airflowByDrop(DROPS, { ...AIR, drop: '0.14 inH2O' })) / 1000).toBeCloseTo(1, 2)
    expect(cfm(airflowByFan('inH2O;CFM\n0,2;1340\n0,4;1235\n', { ...AIR, static: '0.3 inH2O' })) / 1287.5).toBeCloseTo(
      1,
      2,
    )
  })

  test('[property] columns and lines may stand in any order', () => {
    const turned = 'inH2O\tCFM\n0.20\t1200\n0.09\t800\n0.14\t1000\n'
    const drop = { ...AIR, drop: '0.17 inH2O' }
    expect(cfm(airflowByDrop(turned, drop))).toBe(cfm(airflowByDrop(DROPS, drop)))
  })

  test.each([
    ['', 'missing', 'table'],
    ['a,b\n1,2\n', 'unreadable', 'table, heading'],
    ['CFM,inH2O\n800,x\n', 'unreadable', 'table, line 2'],
    ['CFM,inH2O\n800,0.09\n', 'unreadable', 'table of pressure drops'],
  ])('[limit] table %j is a problem', (table, kind, field) => {
    expect(airflowByDrop(table, { drop: '0.1 inH2O' })).toMatchObject({ error: [{ kind, field }] })
  })

  test('[limit] nothing is read beyond the table', () => {
    expect(airflowByDrop(DROPS, { ...AIR, drop: '0.5 inH2O' })).toMatchObject({ error: [{ kind: 'out-of-range' }] })
  })
})
