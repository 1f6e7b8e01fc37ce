import { readFileSync } from 'node:fs'
import { METRIC } from '@chargewright/quantity'
import { SPANISH_AREAS } from '@chargewright/report'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, exampleWith } from '../../../../examples/example-visits.ts'
import { scriptedTerminal } from '../../test/scripted-terminal.ts'
import { run } from '../cli.ts'
import type { AssessAnswer } from '../commands/assess.ts'
import { assessJson } from '../commands/assess-json.ts'
import { assessText } from '../commands/assess-text.ts'
import { wordsOf } from './language.ts'
import { PAGE, SPANISH } from './spanish.ts'

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? []
const spanish = new Set(Object.values(SPANISH).flatMap(wordsIn))
/** Words that stand in English entries and in no Spanish one. */
const ENGLISH = new Set(
  Object.keys(SPANISH)
    .flatMap(wordsIn)
    .filter((word) => !spanish.has(word)),
)
/** Of units. */
const UNITS = new Set(['ton', 'min'])

/** The English of a text without what somebody typed, and without the sources, which are cited as they are. */
function english(text: string, { visit }: Example): readonly string[] {
  const typed = new Set(wordsIn(JSON.stringify(visit.log)))
  return [...new Set(wordsIn(text))].filter((word) => ENGLISH.has(word) && !typed.has(word) && !UNITS.has(word))
}

const refused = exampleWith(
  'orifice-add',
  { kind: 'reading', what: 'supply-air-dry-bulb', value: 'cold' },
  { kind: 'reading', what: 'condenser-leaving-air', value: '250 °F' },
)
const answerOf = ({ visit, assessment }: Example): AssessAnswer => ({ visit, assessment, visits: [], learntFrom: 0 })

describe('an assessment in Spanish', async () => {
  const words = await wordsOf('es')

  test.each([...EXAMPLES, refused].map((each) => [each.name, each] as const))(
    '[property] the page of %s holds no English but what was typed, and what is cited',
    (_, each) => {
      const page = assessText(answerOf(each), METRIC, 200, words)
      // What to enter next is named as a visit file names it, too.
      const said = page.split('\nFuentes')[0]!.replaceAll(/ \([a-zA-Z-]+\):/g, ':')
      expect(english(said, each)).toEqual([])
    },
  )

  test('[property] the data keep their fields and numbers, and say their sentences in it', () => {
    const [es, en] = [words, undefined].map((each) => assessJson(answerOf(refused), METRIC, each))
    const numbersIn = (data: unknown) => JSON.stringify(data, (_, value) => (typeof value === 'string' ? '' : value))
    expect(numbersIn(es)).toBe(numbersIn(en))
    expect(es).toMatchObject({
      finding: { kind: 'cannot-tell', word: 'no se puede saber' },
      problems: [
        {
          message: 'Aire de suministro, bulbo seco: no se puede leer “cold”; se espera un número con unidad: °F, °C, K',
        },
      ],
    })
  })

  test('[property] every own entry is said by the page, and by no package', () => {
    const source = readFileSync('apps/cli/src/commands/assess-text.ts', 'utf8').replaceAll(/\$\{[^}]*\}/g, '{}')
    const said = (text: string) => source.includes(text.replaceAll(/\{\d\}/g, '{}'))
    expect(Object.keys(PAGE).filter((text) => !said(text))).toEqual([])
    expect(Object.keys(PAGE).filter((text) => SPANISH_AREAS.some((area) => Object.hasOwn(area, text)))).toEqual([])
  })
})

test('[property] the flag turns page and record to Spanish; an unknown language is refused', async () => {
  const told = async (...args: readonly string[]) => {
    const terminal = scriptedTerminal()
    return { code: await run(args, terminal), out: terminal.out }
  }
  expect((await told('assess', 'examples/orifice-add.json', '--language', 'es')).out).toContain('Agregue')
  const { out } = await told('report', 'examples/orifice-add.json', '--language', 'es', '--json')
  expect(JSON.parse(out)).toMatchObject({ language: 'es', finding: { word: 'agregar' } })
  expect((await told('assess', 'examples/orifice-add.json', '--language', 'xx')).code).toBe(2)
})
