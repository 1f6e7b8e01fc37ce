import { readFileSync } from 'node:fs'
import { INCH_POUND, render, say } from '@chargewright/quantity'
import type { Fact, SystemStatement } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { visitOf } from '../../../../examples/example-visits.ts'
import { compressorChecks, supplyChecks } from './compressor-checks.ts'

const compressorRating = readFileSync(
  new URL('../../../../examples/service/compressor-coefficients.csv', import.meta.url),
  'utf8',
)
const facts = { refrigerant: 'R-410A', compressorRating }
type Reading = Extract<Fact, { readonly kind: 'reading' }>
const read = (what: Reading['what'], value: string): Fact => ({ kind: 'reading', what, value })
const supply = (...voltages: string[]): Fact => ({ kind: 'supply-measured', voltages, nominal: '460 V' })
const ports = [read('suction-pressure', '130 psig'), read('liquid-pressure', '364 psig')]

const checksOf = (facts: SystemStatement, ...others: readonly Fact[]) => {
  const { visit } = visitOf({ kind: 'system-described', facts }, ...others)
  return [...supplyChecks(visit), ...compressorChecks(visit)]
}
const told = (...given: Parameters<typeof checksOf>) =>
  checksOf(...given).map(({ title, verdict, sentence }) => render(say`${title}: ${verdict}. ${sentence}`, INCH_POUND))

test('[property] supply and compressor are told, each with its verdict', () => {
  expect(told(facts, ...ports, read('compressor-power', '900 W'), supply('500 V', '420 V', '460 V'))).toEqual([
    expect.stringMatching(/^Supply: do not run it. Voltage unbalance 8.7 ± \d/),
    expect.stringMatching(
      /^Compressor power: below the band. Measured power 900 ± 38 W is more than 5 % below the expected/,
    ),
  ])
})

test('[property] the limit and its source, the level and what to do follow as reasons', () => {
  const [check] = checksOf({}, supply('500 V', '420 V', '460 V'))
  const reasons = check?.reasons.map(({ statement, source }) => `${render(statement, INCH_POUND)} (${source})`)
  expect(reasons?.[0]).toBe('The limit is that of the source (NEMA MG-1)')
  expect(reasons?.join()).toContain('Supply 460 ± 5 V is within 414 V to 506 V')
  expect(reasons?.join()).toContain('Stop the compressor and lock it out')
})

test('[limit] what cannot be judged says why; of what nothing was read it says nothing', () => {
  expect(told(facts, ...ports)).toEqual([])
  expect(told({ refrigerant: 'R-410A' }, ...ports, read('compressor-power', '900 W'))).toEqual([])
  expect(told(facts, read('compressor-power', '900 W'))[0]).toContain(
    'Compressor: not judged. Suction pressure: missing',
  )
  expect(told({}, supply('460 V', '461 V'))[0]).toContain('Supply: not judged. voltages:')
})
