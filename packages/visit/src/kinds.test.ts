import { parse } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { OBSERVATION_IDS, observationKind } from './observation-kind.ts'
import { INSTRUMENT_IDS, instrumentSort } from './plain-instrument.ts'
import { READING_IDS, readingKind, STATIONS } from './reading-kind.ts'
import { FIGURE_IDS, figureKind } from './system.ts'

const repeated = (texts: readonly string[]) => texts.filter((text, i) => texts.indexOf(text) !== i)

describe('what a form can ask for', () => {
  test('[property] no label stands for two things', () => {
    expect(repeated(READING_IDS.map((id) => readingKind(id).label))).toEqual([])
    expect(repeated(OBSERVATION_IDS.map((id) => observationKind(id).label))).toEqual([])
    expect(repeated(FIGURE_IDS.map((id) => figureKind(id).label))).toEqual([])
  })

  test('[property] readings come in walking order, and every station has some', () => {
    const order = STATIONS.map(({ id }) => id as string)
    const walked = READING_IDS.map((id) => readingKind(id).station as string)
    expect(walked).toEqual(walked.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)))
    expect([...new Set(walked)]).toEqual(order)
  })

  test.each(FIGURE_IDS)('[property] the example of %s can be read', (id) => {
    const { example, accepts } = figureKind(id)
    expect(parse(example, accepts)).toMatchObject({ ok: true })
  })

  test.each(READING_IDS)(
    '[property] %s has a range, an instrument that shows it and a word on reading it well',
    (id) => {
      const { plausible, instrument, accepts, howTo } = readingKind(id)
      expect(plausible[0]).toBeLessThan(plausible[1])
      expect(instrumentSort(instrument).accepts).toEqual(accepts)
      expect(howTo).toMatch(/^[A-Z].{30,130}\.$/)
    },
  )

  test.each(INSTRUMENT_IDS)('[property] a plain %s can be off, by a source', (id) => {
    const { accuracy } = instrumentSort(id)
    expect(accuracy.limit + accuracy.fraction).toBeGreaterThan(0)
    expect(accuracy.source).not.toBe('')
  })

  test.each(OBSERVATION_IDS)('[property] %s has at least two answers, in different words', (id) => {
    const words = Object.values(observationKind(id).answers)
    expect(words.length).toBeGreaterThan(1)
    expect(repeated(words)).toEqual([])
  })
})
