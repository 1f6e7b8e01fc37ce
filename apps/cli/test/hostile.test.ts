import { INCH_POUND } from '@chargewright/quantity'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerLine, type BatchVerb } from '../src/batch/answer-line.ts'
import { readPoint } from '../src/commands/point-flags.ts'
import { assessBatch, leakBatch, saturationBatch, stateBatch } from '../src/verbs/batch.ts'
import { defectOf, defectOfPrinted } from './defects.ts'
import { flags, pointLine, visitLine } from './hostile-values.ts'

// More than 100 000 inputs in all, the same in every run. None may end in anything but an answer or a problem, and a problem must
// name its field, its value and what would have been accepted.
const RUNS = { flags: 46_000, saturation: 30_000, state: 20_000, leak: 2_000, assess: 3_000 }

test('[property] flags are read or refused with field, value and range', () => {
  fc.assert(
    fc.property(flags, (typed) => {
      const read = readPoint(typed)
      const defects = read.ok ? numbersOf(read.value).filter((n) => !Number.isFinite(n)) : read.error.map(defectOf)
      expect(defects.filter((defect) => defect !== undefined)).toEqual([])
    }),
    { seed: 51, numRuns: RUNS.flags },
  )
})

test.each([
  ['saturation', pointLine(['pressure_Pa'], ['temperature_K'], ['pressure_Pa', 'temperature_K']), saturationBatch],
  ['state', pointLine(['pressure_Pa', 'temperature_K'], ['pressure_Pa', 'quality']), stateBatch],
  ['leak', pointLine(['temperature_K', 'lost'], ['temperature_K', 'lost', 'fill', 'top_up_to']), leakBatch],
  ['assess', visitLine, assessBatch(INCH_POUND)],
] as const)(
  '[property] %s answers a line with finite numbers or refuses it with field, value and range',
  (name, lines, verb) => {
    fc.assert(
      fc.property(lines, (text) => {
        expect(defectsOf(text, verb)).toEqual([])
      }),
      { seed: 52, numRuns: RUNS[name] },
    )
  },
)

function defectsOf(text: string, verb: BatchVerb): readonly unknown[] {
  const answer = answerLine({ number: 1, text }, verb)
  if (answer === undefined) return text.trim() === '' ? [] : ['not answered']
  const { error, others = [], problems = [], doubts = [], ...values } = JSON.parse(answer.json)
  if (answer.ok) {
    const nulls = JSON.stringify(values).replaceAll('"method":null', '').includes(':null') ? ['not a number'] : []
    return [...nulls, ...[...problems, ...doubts].map(defectOfPrinted)].filter((defect) => defect !== undefined)
  }
  return [error, ...others].map(defectOfPrinted).filter((defect) => defect !== undefined)
}

function numbersOf(value: object): readonly number[] {
  return Object.values(value).flatMap((part) =>
    typeof part === 'number' ? [part] : typeof part === 'object' && part !== null ? numbersOf(part) : [],
  )
}
