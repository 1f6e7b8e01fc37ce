import { readdirSync, readFileSync } from 'node:fs'
import { CAUSES, type Cause } from '@chargewright/diagnosis'
import { findRefrigerant } from '@chargewright/refrigerant'
import { fold, readVisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { type WeighedCauses, weighedCauses } from '../src/index.ts'

const folder = new URL('../../../examples/causes/', import.meta.url)

function weighed(name: string): WeighedCauses {
  const file = readVisitFile(readFileSync(new URL(`${name}.json`, folder), 'utf8'))
  if (!file.ok) throw new Error(JSON.stringify(file.error))
  expect(file.value.about).toMatch(/^Invented/)
  const visit = fold(file.value)
  const refrigerant = findRefrigerant(visit.system.facts.refrigerant!)
  const found = refrigerant.ok ? weighedCauses({ visit, refrigerant: refrigerant.value }) : refrigerant
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

interface Shown {
  /** Trouble that looks like it, in whose file it must not be named. */
  readonly notIn: Cause
  /** File in which it and its look-alike cannot be told apart. */
  readonly cannotTell: string
  readonly lookAlike: Cause
}

/** Each cause in the file of its own name; where it must stay silent; and where nobody can tell. */
const SHOWN: Readonly<Record<Cause, Shown>> = {
  sound: { notIn: 'short-of-charge', cannotTell: 'short-or-sound', lookAlike: 'short-of-charge' },
  'short-of-charge': { notIn: 'liquid-line-restriction', cannotTell: 'short-or-sound', lookAlike: 'sound' },
  overcharged: { notIn: 'non-condensables', cannotTell: 'overcharged-or-gas', lookAlike: 'non-condensables' },
  'low-indoor-air': { notIn: 'valve-feeds-too-much', cannotTell: 'indoor-air-or-sound', lookAlike: 'sound' },
  'poor-condenser-air': { notIn: 'overcharged', cannotTell: 'condenser-air-or-gas', lookAlike: 'non-condensables' },
  'liquid-line-restriction': {
    notIn: 'short-of-charge',
    cannotTell: 'restricted-or-short',
    lookAlike: 'short-of-charge',
  },
  'non-condensables': {
    notIn: 'poor-condenser-air',
    cannotTell: 'condenser-air-or-gas',
    lookAlike: 'poor-condenser-air',
  },
  'weak-compressor': { notIn: 'low-indoor-air', cannotTell: 'weak-compressor-or-sound', lookAlike: 'sound' },
  'valve-feeds-too-little': {
    notIn: 'liquid-line-restriction',
    cannotTell: 'restricted-or-valve',
    lookAlike: 'liquid-line-restriction',
  },
  'valve-feeds-too-much': { notIn: 'valve-feeds-too-little', cannotTell: 'valve-or-sound', lookAlike: 'sound' },
}

const named = ({ decision }: WeighedCauses): string => (decision.kind === 'other' ? decision.cause : decision.kind)
const NAMED_AS: Partial<Record<Cause, string>> = { sound: 'hold', 'short-of-charge': 'add', overcharged: 'recover' }
const chance = ({ diagnosis }: WeighedCauses, cause: Cause) =>
  diagnosis.singles.find((single) => single.cause === cause)?.probability ?? 0

describe('example visits of every cause', () => {
  test.each(Object.entries(SHOWN) as [Cause, Shown][])('[pinned] %s is named where it is clear', (cause) => {
    const said = weighed(cause)
    expect(named(said)).toBe(NAMED_AS[cause] ?? cause)
    expect(chance(said, cause)).toBeGreaterThan(0.85)
  })

  test.each(Object.entries(SHOWN) as [Cause, Shown][])(
    '[pinned] %s is not named for what looks like it',
    (cause, { notIn }) => {
      expect(chance(weighed(notIn), cause)).toBeLessThan(0.05)
    },
  )

  test.each(Object.entries(SHOWN) as [Cause, Shown][])(
    '[pinned] %s cannot be told from its look-alike where too little speaks for either',
    (cause, { cannotTell, lookAlike }) => {
      const said = weighed(cannotTell)
      expect(['read', 'undecided']).toContain(said.decision.kind)
      expect(chance(said, cause)).toBeGreaterThan(0.2)
      expect(chance(said, lookAlike)).toBeGreaterThan(0.2)
    },
  )

  test('[property] every file is shown, and every cause has one', () => {
    const shown = new Set([...CAUSES, ...Object.values(SHOWN).map(({ cannotTell }) => cannotTell)])
    const files = readdirSync(folder).flatMap((name) => (name.endsWith('.json') ? [name.replace('.json', '')] : []))
    expect(files.toSorted()).toEqual([...shown].toSorted())
  })
})
