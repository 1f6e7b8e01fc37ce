import { evidence, INCH_POUND, METRIC, say } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type Example, example, exampleWith } from '../../../examples/example-visits.ts'
import { type PdfWord, pdfWords } from '../../../scripts/pdf-text.ts'
import { renderPdf, serviceRecord } from '../src/index.ts'
import { SIZE } from '../src/pdf/style.ts'

const check = { title: say`Evacuation`, verdict: say`held`, sentence: say`It held`, reasons: [] }

/** The words of every page above its foot, of a visit with so many notes and checks more than it has. */
async function pages({ visit, assessment }: Example, notes: number, checks: number) {
  const log = visit.log.slice(0, visit.log.length - MOST + notes)
  const definition = serviceRecord({ ...visit, log }, assessment, {
    preference: INCH_POUND,
    created: '2026-07-01T12:00:00Z',
    checks: Array.from({ length: checks }, () => check),
  })
  return pdfWords(await renderPdf(definition)).map((words) => words.filter(({ y }) => y > FOOT))
}
const FOOT = 36
const MOST = 24
const withNotes = (name: string) =>
  exampleWith(name, ...Array.from({ length: MOST }, () => ({ kind: 'note', text: 'Seen from the ladder.' }) as const))

/** Headings under which nothing stands close by in their own column. */
const bareHeadings = (words: readonly PdfWord[]): readonly string[] =>
  words
    .filter(({ size, x }) => size === SIZE.heading && Math.abs(x - 36) < 1)
    .filter(
      (heading) =>
        !words.some(
          ({ x, y, size }) => size < SIZE.heading && x < heading.x + 50 && y < heading.y && y > heading.y - 45,
        ),
    )
    .map(({ text }) => text)

describe('however long a record is', () => {
  const examples = [withNotes('orifice-add'), withNotes('capillary-weigh-in'), withNotes('step-by-step')]
  const lengths = Array.from({ length: 12 }, (_, i) => [2 * i, (5 * i) % 12] as const)

  test.each(examples.map((each) => [each.name, each] as const))(
    '[property] %s: no heading stands alone, and what is signed stands above the signatures',
    async (_, each) => {
      for (const [notes, checks] of lengths) {
        const all = await pages(each, notes, checks)
        const found = all.map((words) => ({
          bare: bareHeadings(words),
          isSigned: words.some(({ text }) => text === 'Technician'),
          says: words.filter(({ size }) => size === SIZE.body).length,
        }))
        expect(found.flatMap(({ bare }) => bare)).toEqual([])
        expect(found.map(({ isSigned }) => isSigned)).toEqual(all.map((_, i) => i === all.length - 1))
        expect(found.at(-1)!.says).toBeGreaterThan(1)
      }
    },
  )

  test('[limit] a section too long to be moved leaves its place, and the sources go with the signatures', async () => {
    const { visit, assessment } = example('orifice-add')
    const reasons = Array.from({ length: 64 }, (_, i) => ({ statement: say`reason ${i + 1}`, from: [] }))
    for (let length = 28; length < reasons.length; length += 3) {
      const checks = [{ ...check, reasons: reasons.slice(0, length) }]
      const options = { preference: METRIC, created: '2026-07-01T12:00:00Z', checks }
      const last = pdfWords(await renderPdf(serviceRecord(visit, assessment, options))).at(-1)!
      expect(last.filter(({ size }) => size === SIZE.heading).length).toBeGreaterThan(0)
    }
  })

  test('[property] no table begins with a single row at the end of a page', async () => {
    const { visit, assessment } = example('step-by-step')
    const { finding } = assessment
    for (let more = 0; more <= 12; more += 2) {
      const reasons = [...finding.reasons, ...Array.from({ length: more }, () => evidence(say`one more reason`))]
      const options = { preference: INCH_POUND, created: '2026-07-01T12:00:00Z' }
      const bytes = await renderPdf(serviceRecord(visit, { ...assessment, finding: { ...finding, reasons } }, options))
      const isHeading = ({ text, size }: PdfWord) => size === SIZE.heading && text.startsWith('Readings,')
      const words = pdfWords(bytes).find((page) => page.some(isHeading))!
      const { y: top } = words.find(isHeading)!
      // The number of its source ends every row.
      const rows = words.filter(({ text, x, y }) => /^\[\d+\]/.test(text) && x > 500 && y < top)
      expect(rows.length).toBeGreaterThan(1)
    }
  })

  test('[property] in the column beside the pictures no heading stands alone either', async () => {
    const { visit, assessment } = example('orifice-add')
    const { finding } = assessment
    for (let more = 0; more <= 48; more += 3) {
      const reasons = [...finding.reasons, ...Array.from({ length: more }, () => evidence(say`one more reason`))]
      const options = { preference: METRIC, created: '2026-07-01T12:00:00Z' }
      const bytes = await renderPdf(serviceRecord(visit, { ...assessment, finding: { ...finding, reasons } }, options))
      const bare = pdfWords(bytes).map((words) => bareHeadings(words.filter(({ y }) => y > FOOT)))
      expect(bare.flat()).toEqual([])
    }
  })
})
