import { readdirSync, readFileSync } from 'node:fs'
import { fold, readVisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { type Assessment, assess } from '../src/index.ts'

const folder = new URL('../../../examples/', import.meta.url)

function assessments(): readonly (readonly [string, Assessment])[] {
  return ['', 'causes/'].flatMap((under) =>
    readdirSync(new URL(under, folder))
      .filter((name) => name.endsWith('.json'))
      .map((name) => {
        const file = readVisitFile(readFileSync(new URL(under + name, folder), 'utf8'))
        if (!file.ok) throw new Error(JSON.stringify(file.error))
        return [name, assess(fold(file.value))] as const
      }),
  )
}

const SPEAKS_FOR = '{0}, no reading would be out of place'
const SPEAKS_AGAINST = '{0}, {1} of {2} readings would be elsewhere'

describe('what is said of a cause, in every example visit', () => {
  const all = assessments()
  const judged = all.flatMap(([name, { lookAlikes }]) =>
    lookAlikes.map(({ id, verdict, evidence }) => ({ name, id, verdict, says: evidence.statement.template })),
  )

  test('[property] nothing speaks for one that is told to be unlikely or ruled out', () => {
    const unlikely = judged.filter(({ verdict }) => verdict === 'unlikely' || verdict === 'excluded')
    expect(unlikely.length).toBeGreaterThan(10)
    expect(unlikely.filter(({ says }) => says === SPEAKS_FOR)).toEqual([])
  })

  test('[property] nothing speaks against one that explains the readings, nor against the charge that is moved', () => {
    const named = judged.filter(({ verdict }) => verdict === 'explains')
    expect(named.length).toBeGreaterThan(3)
    expect(named.filter(({ says }) => says === SPEAKS_AGAINST)).toEqual([])
    const moved = all.filter(([, { finding }]) => finding.dose)
    expect(moved.length).toBeGreaterThan(3)
    const against = moved.filter(([, { finding }]) =>
      finding.reasons.some(({ statement }) => statement.template === SPEAKS_AGAINST),
    )
    expect(against.map(([name]) => name)).toEqual([])
  })
})
