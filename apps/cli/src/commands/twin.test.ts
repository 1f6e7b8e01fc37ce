import { readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { widthOf } from '../text/columns.ts'
import { type TwinAnswer, type TwinFlags, twin } from './twin.ts'
import { twinJson } from './twin-json.ts'
import { twinText } from './twin-text.ts'
import { WHAT_IF_AXES } from './what-if-axis.ts'

const FACTS = JSON.parse(readFileSync('examples/service/system.json', 'utf8'))
const VISIT = JSON.parse(readFileSync('examples/orifice-add.json', 'utf8'))

function found(data: unknown, flags: TwinFlags = {}): TwinAnswer {
  const answer = twin(data, flags)
  if (!answer.ok) throw new Error(JSON.stringify(answer.error))
  return answer.value
}

function superheatOf({ solution }: TwinAnswer): number {
  if (solution.kind !== 'steady') throw new Error(solution.kind)
  return solution.readings.superheat_K
}

const refused = (data: unknown, flags: TwinFlags = {}) => {
  const answer = twin(data, flags)
  return answer.ok ? [] : answer.error.map(({ kind, field }) => `${kind} ${field}`)
}

describe('twin', () => {
  test('[property] without flags shows the rated state', () => {
    const { system, conditions, solution } = found(FACTS)
    expect(conditions).toEqual(system.rated.conditions)
    expect(superheatOf(found(FACTS))).toBeCloseTo(system.rated.superheat_K, 3)
    expect(solution.kind === 'steady' && solution.readings.subcooling_K).toBeCloseTo(system.rated.subcooling_K, 3)
  })

  test('[property] a visit runs in the weather that was last read, flags go before it', () => {
    const { conditions } = found(VISIT, { outdoor: '85 degF' })
    expect(conditions.outdoor.dryBulb_K).toBeCloseTo(302.594, 2)
    expect(conditions.indoor.dryBulb_K).toBeCloseTo(299.817, 2)
    expect(conditions.indoor.wetBulb_K).toBeCloseTo(292.594, 2)
  })

  test('[property] return air without its wet bulb keeps the wet-bulb depression', () => {
    const { indoor } = found(FACTS, { return: '75 degF' }).conditions
    const { indoor: rated } = found(FACTS).conditions
    expect(indoor.dryBulb_K - indoor.wetBulb_K).toBeCloseTo(rated.dryBulb_K - rated.wetBulb_K, 6)
  })

  test('[property] the elevation in the facts sets the air pressure', () => {
    const { indoor } = found({ ...FACTS, elevation: '5000 ft' }).conditions
    expect(indoor.pressure_Pa).toBeLessThan(85_000)
  })

  test('[property] a charge may be a share or a mass, and less of it superheats more', () => {
    expect(superheatOf(found(FACTS, { charge: '90 %' }))).toBeCloseTo(
      superheatOf(found(FACTS, { charge: '93.6 oz' })),
      6,
    )
    expect(superheatOf(found(FACTS, { charge: '80 %' }))).toBeGreaterThan(superheatOf(found(FACTS)) + 3)
  })

  test.each(Object.keys(WHAT_IF_AXES))('[property] what-if %s ends every point in a state, and is written', (axis) => {
    const answer = found(FACTS, { whatIf: axis })
    const points = answer.whatIf?.points ?? []
    expect(points.length).toBeGreaterThanOrEqual(6)
    for (const { solution } of points) expect(solution.kind).not.toBe('no-solution')
    for (const units of [INCH_POUND, METRIC]) {
      expect(twinText(answer, units, 80)).toContain('What if: ')
      expect(JSON.stringify(twinJson(answer, units))).not.toMatch(/:null[,}]/)
    }
  })

  test('[property] what a state means for the machine is named in words and by kind', () => {
    const starved = found(FACTS, { charge: '50 %' })
    const flooded = found(FACTS, { charge: '130 %' })
    expect(twinText(starved, METRIC, 80)).toContain('Vapour reaches the metering device')
    expect(twinText(flooded, METRIC, 80)).toContain('Liquid reaches the compressor')
    expect(twinJson(flooded, METRIC)).toMatchObject({ state: 'steady', outcomes: [{ kind: 'flooded' }] })
    const crammed = found(FACTS, { charge: '250 %' })
    expect(twinJson(crammed, METRIC)).toMatchObject({ state: 'overfull', outcomes: [{ kind: 'overfull' }] })
    expect(twinText(crammed, METRIC, 80)).toContain('The charge does not fit')
  })

  test('[property] the page says what it is, and keeps to the width', () => {
    for (const width of [60, 80, 100]) {
      const lines = twinText(found(VISIT), INCH_POUND, width).split('\n')
      expect(lines.slice(0, 2).join(' ')).toContain('estimated by model')
      expect(lines.filter((line) => widthOf(line) > width)).toEqual([])
    }
  })

  test('[limit] every fact that is missing is named, and so is a flag that cannot be used', () => {
    expect(refused({})).toEqual([
      'missing Refrigerant',
      'missing Metering device',
      'missing Application',
      'missing Nominal capacity',
      'missing Nameplate charge',
    ])
    expect(refused({ ...FACTS, nominalCapacity: '3' })).toEqual(['unreadable Nominal capacity'])
    expect(refused({ ...FACTS, colour: 'red' })).toEqual([expect.stringMatching(/colour$/)])
    expect(refused('R-410A')).toEqual([expect.stringMatching(/ system$/)])
    expect(refused(FACTS, { outdoor: '95' })).toEqual([expect.stringMatching(/^unreadable outdoor|^ambiguous outdoor/)])
    expect(refused(FACTS, { outdoor: '500 degF' })).toEqual([expect.stringMatching(/^out-of-range/)])
    expect(refused(FACTS, { charge: '5 %' })).toEqual(['out-of-range charge'])
    expect(refused(FACTS, { charge: 'some' })).toEqual(['unreadable charge'])
    expect(refused(FACTS, { whatIf: 'toString' })).toEqual(['unreadable what-if'])
  })
})
