import { readdirSync, readFileSync } from 'node:fs'
import { pascal, type Quantity, STANDARD_ATMOSPHERE, toAbsolute } from '@chargewright/quantity'
import { findRefrigerant, saturationAtPressure } from '@chargewright/refrigerant'
import { fold, readVisitFile, type VisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { type Assessment, assess, FINDINGS, type FindingKind, METHODS, type MethodId } from '../src/index.ts'

const folder = new URL('../../../examples/', import.meta.url)
const readme = readFileSync(new URL('README.md', folder), 'utf8')

const OUNCE = 0.028349523125

interface Example {
  readonly method: MethodId
  readonly finding: FindingKind
  /** What is to blame, where it is not the charge. */
  readonly cause?: string
  /** The condition that does not hold, or is not known. */
  readonly condition?: string
  /** The entry that would tell most. */
  readonly next?: string
  /** Mass of the next step, oz. */
  /** Of a step by a rule. */
  readonly step_oz?: number
  /** Of a step by the twin: the share of the nameplate charge within which its interval must lie. */
  readonly twin?: { readonly nameplate_oz: number; readonly from: number; readonly to: number }
}

/** What each visit must find. First steps are 5 % of the nameplate charge, half of it for a mildly flammable one. */
const EXAMPLES: Readonly<Record<string, Example>> = {
  'orifice-add': { method: 'superheat', finding: 'add', twin: { nameplate_oz: 104, from: 0.03, to: 0.4 } },
  'orifice-hold': { method: 'superheat', finding: 'hold' },
  'orifice-recover': { method: 'superheat', finding: 'recover', twin: { nameplate_oz: 104, from: -0.01, to: 0.3 } },
  'orifice-no-valid-test': {
    method: 'superheat',
    finding: 'not-ready',
    condition: 'target',
    next: 'return-air-wet-bulb',
  },
  'orifice-cold-outdoors': { method: 'superheat', finding: 'not-ready', condition: 'outdoor-temperature' },
  'orifice-starved-coil': { method: 'superheat', finding: 'not-the-charge', cause: 'liquid-line-restriction' },
  'orifice-low-airflow': { method: 'superheat', finding: 'not-ready', condition: 'airflow', next: 'airflow' },
  'orifice-no-airflow-evidence': {
    method: 'superheat',
    finding: 'cannot-tell',
    condition: 'airflow',
    next: 'airflow',
  },
  'orifice-band-edge': { method: 'superheat', finding: 'cannot-tell', next: 'return-air-wet-bulb' },
  'orifice-makers-chart': { method: 'superheat', finding: 'hold' },
  'capillary-weigh-in': { method: 'weight', finding: 'add', step_oz: 3.25 },
  'capillary-weighed-in': { method: 'weight', finding: 'hold' },
  'capillary-charge-doubted': { method: 'weight', finding: 'not-ready', condition: 'system-empty' },
  'capillary-lost-charge': { method: 'weight', finding: 'not-the-charge', cause: 'leak', condition: 'system-empty' },
  // 6 lb 4 oz; 30 ft of line at 0.6 oz/ft; 8 in³ of liquid, which at 100 °F weighs 0.571 oz/in³.
  'line-set-weigh-in': { method: 'weight', finding: 'add', step_oz: 100 + 18 + 8 * 0.571 },
  'receiver-bubbles-under-load': { method: 'sight-glass', finding: 'add', step_oz: 0.1 * 224 },
  'receiver-low-load': { method: 'sight-glass', finding: 'not-ready', condition: 'load', next: 'box-temperature' },
  'receiver-drier-restricted': { method: 'sight-glass', finding: 'not-the-charge', cause: 'liquid-line-restriction' },
  'valve-subcooling-add': { method: 'subcooling', finding: 'add', twin: { nameplate_oz: 90, from: 0.02, to: 0.35 } },
  'valve-subcooling-hold': { method: 'subcooling', finding: 'hold' },
  'valve-dirty-condenser': { method: 'subcooling', finding: 'not-the-charge', cause: 'gas-or-poor-condenser-air' },
  'glide-r407c': { method: 'subcooling', finding: 'add', twin: { nameplate_oz: 148, from: 0.01, to: 0.6 } },
  'step-by-step': { method: 'superheat', finding: 'hold' },
}

function example(name: string): VisitFile {
  const file = readVisitFile(readFileSync(new URL(`${name}.json`, folder), 'utf8'))
  if (!file.ok) throw new Error(JSON.stringify(file.error))
  return file.value
}

describe('example visits', () => {
  test('[property] no two visits of one system begin in the same minute', () => {
    const begun = Object.keys(EXAMPLES).map((name) => {
      const { events } = example(name)
      return `${fold({ id: name, events }).system.facts.name} ${events[0]!.at}`
    })
    expect(begun.filter((one, i) => begun.indexOf(one) !== i)).toEqual([])
  })

  test.each(Object.entries(EXAMPLES))('[property] %s finds what it is there to show', (name, expected) => {
    const file = example(name)
    expect(file.about).toMatch(/^Invented/)
    const assessment = assess(fold(file))
    const { finding, method, conditions, problems, doubts } = assessment
    expect({ method: method?.id, finding: finding.kind, problems, doubts }).toEqual({
      method: expected.method,
      finding: expected.finding,
      problems: [],
      doubts: [],
    })
    expect(finding.cause?.id).toBe(expected.cause)
    const broken = conditions.find(({ state }) => state === 'unmet' || state === 'unknown')
    expect(broken?.id).toBe(expected.condition)
    expect(finding.next[0]?.entry.what).toBe(expected.next)
    const { dose } = finding
    const { step_oz, twin } = expected
    if (step_oz !== undefined) expect(dose!.mass.si / OUNCE).toBeCloseTo(step_oz, 2)
    else if (twin) {
      const shares = [dose!.interval!.low, dose!.mass, dose!.interval!.high].map(
        ({ si }) => si / OUNCE / twin.nameplate_oz,
      )
      expect(shares[0]).toBeGreaterThan(twin.from)
      expect(shares[2]).toBeLessThan(twin.to)
      expect(shares[1]).toBeLessThan(shares[2]!)
    } else expect(dose).toBeUndefined()
  })

  test('[property] are all in the table above and in the README, with their finding', () => {
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
    expect(files.sort()).toEqual(
      Object.keys(EXAMPLES)
        .map((name) => `${name}.json`)
        .sort(),
    )
    const rows = readme.split('\n').filter((line) => line.startsWith('| `'))
    const told = rows.map((row) => [/`([^`]+)\.json`/.exec(row)?.[1], row.split('|').at(-2)?.trim()])
    expect(told).toEqual(Object.entries(EXAMPLES).map(([name, { finding }]) => [name, FINDINGS[finding]]))
  })

  test('[property] cover every method and every finding', () => {
    const examples = Object.values(EXAMPLES)
    expect(new Set(examples.map(({ method }) => method))).toEqual(new Set(Object.keys(METHODS)))
    expect(new Set(examples.map(({ finding }) => finding))).toEqual(new Set(Object.keys(FINDINGS)))
  })
})

describe('a blend with glide', () => {
  test('[property] one temperature per pressure would have called the short charge of glide-r407c right', () => {
    const visit = fold(example('glide-r407c'))
    const refrigerant = findRefrigerant('R-407C')
    const typed = visit.readings['liquid-pressure']!.quantity as Quantity<'gauge pressure'>
    const p = toAbsolute(typed, STANDARD_ATMOSPHERE, 'liquid pressure')
    if (!refrigerant.ok || !p.ok) throw new Error('no refrigerant or no pressure')
    const at = saturationAtPressure(refrigerant.value, pascal(p.value.si))
    if (!at.ok) throw new Error(JSON.stringify(at.error))
    const liquid_K = visit.readings['liquid-temperature']!.quantity.si
    const nameplate_K = visit.system.figures.nameplateSubcooling!.quantity.si
    const tolerance_K = 3 * (5 / 9)
    const by = { bubble: at.value.bubble.temperature_K - liquid_K, dew: at.value.dew.temperature_K - liquid_K }

    // The dew line is the one that a chart for vapour prints; read for liquid it adds the glide to the subcooling.
    expect(Math.abs(by.dew - nameplate_K)).toBeLessThan(tolerance_K)
    expect(by.bubble).toBeLessThan(nameplate_K - tolerance_K)
    expect(at.value.dew.temperature_K - at.value.bubble.temperature_K).toBeGreaterThan(4)
    expect(assess(visit).finding.kind).toBe('add')
  })
})

describe('step-by-step, as it goes on', () => {
  const file = example('step-by-step')
  const until = (event: string): Assessment => {
    const end = file.events.findIndex(({ id }) => id === `demo-step-by-step-${event}`)
    return assess(fold({ id: file.id, events: file.events.slice(0, end + 1) }))
  }
  const moments: readonly [situation: string, event: string, finding: FindingKind][] = [
    [
      'before the slip of the pen is corrected: no superheat at all, and nothing is moved on its word',
      '11',
      'cannot-tell',
    ],
    ['after the correction', '12', 'add'],
    ['right after the first step: not settled', '13', 'not-ready'],
    ['after the wait, not yet read again', '14', 'not-ready'],
    ['read again', '19', 'add'],
    ['after the second step, waited and read again', '27', 'hold'],
  ]
  test.each(moments)('[property] %s', (_, event, finding) => {
    expect(until(event).finding.kind).toBe(finding)
  })

  test('[property] the interval of the second step holds what the first one suggests, and is narrower', () => {
    // 5 oz took the superheat from 26.76 to 21.16 °F; in proportion the 8.16 °F that are left would take 7.28 oz.
    const [first, second] = [until('12').finding.dose!.interval!, until('19').finding.dose!.interval!]
    expect(second.low.si / OUNCE).toBeLessThan(7.28)
    expect(second.high.si / OUNCE).toBeGreaterThan(7.28)
    expect(second.high.si - second.low.si).toBeLessThan(first.high.si - first.low.si)
  })
})
