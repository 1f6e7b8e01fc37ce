/// <reference path="./pdfmake.d.ts" />
import bold from '../font/AtkinsonHyperlegibleNext-Bold.json' with { type: 'json' }
import regular from '../font/AtkinsonHyperlegibleNext-Regular.json' with { type: 'json' }
import { breaksBefore, KEPT } from './pdf/breaks-before.ts'
import type { PdfDefinition } from './pdf/node.ts'
import { RULE, SIZE, SOFT } from './pdf/style.ts'

/** The family by the name that the pictures ask for. */
const FAMILY = 'Atkinson Hyperlegible Next'

/**
 * The bytes of a PDF 1.7 file: vectors and text with its own embedded font, nothing loaded from anywhere. The writer is
 * loaded at the first call only. The same definition gives the same bytes.
 */
export async function renderPdf({ created, foot, pageOfPages, ...definition }: PdfDefinition): Promise<Uint8Array> {
  const { default: pdfmake } = await import('pdfmake')
  for (const { postScriptName, ttf } of [regular, bold]) {
    pdfmake.virtualfs.writeFileSync(postScriptName, ttf, 'base64')
  }
  // The files are named as the fonts name themselves: the texts of a picture find an embedded font by that name only.
  pdfmake.setFonts({
    [FAMILY]: {
      normal: regular.postScriptName,
      bold: bold.postScriptName,
      italics: regular.postScriptName,
      bolditalics: bold.postScriptName,
    },
  })
  pdfmake.setUrlAccessPolicy(() => false)
  pdfmake.setLocalAccessPolicy?.(() => false)
  pdfmake.setTableLayouts({ ruled: ruledFrom(1), titled: ruledFrom(2) })
  // A copy, because the writer keeps its measurements in the definition it is given.
  const copy: typeof definition = JSON.parse(JSON.stringify(definition))
  return await pdfmake
    .createPdf({
      ...copy,
      version: '1.7',
      displayTitle: true,
      info: { ...copy.info, producer: 'Chargewright', creationDate: asDate(created) },
      defaultStyle: { font: FAMILY, fontSize: SIZE.body, lineHeight: 1.08 },
      pageBreakBefore: breaksBefore,
      footer: (page: number, pages: number) => ({
        columns: [
          { text: foot, width: '*', headlineLevel: KEPT.foot },
          {
            text: pageOfPages.replace('{0}', String(page)).replace('{1}', String(pages)),
            width: 'auto',
            headlineLevel: KEPT.foot,
          },
        ],
        headlineLevel: KEPT.foot,
        fontSize: SIZE.small,
        color: SOFT,
        margin: [copy.pageMargins[0], 14, copy.pageMargins[2], 0],
      }),
    })
    .getBuffer()
}

// biome-ignore lint/style/noRestrictedGlobals: the writer takes its date as an object; the time itself was passed in.
const asDate = (iso: string): Date => new Date(iso)

/** Thin rules between the rows from this one on, and none at the sides or around. */
const ruledFrom = (first: number) => ({
  hLineWidth: (i: number, { table }: { table: { body: readonly unknown[] } }) =>
    i < first || i === table.body.length ? 0 : 0.4,
  vLineWidth: () => 0,
  hLineColor: () => RULE,
  paddingLeft: (i: number) => (i === 0 ? 0 : 4),
  paddingRight: () => 4,
  paddingTop: () => 1.6,
  paddingBottom: () => 1.6,
})
