import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import ozoneFile from '../../data/facts/ozone.json' with { type: 'json' }
import usesFile from '../../data/facts/uses.json' with { type: 'json' }
import { unknownName } from '../find-refrigerant.ts'
import { recipeOf } from '../recipe.ts'
import { type Listed, listedAs } from '../refrigerant-name.ts'
import { type ApplianceChargeLimits, applianceChargeLimits } from './appliance-charge-limits.ts'
import { type ChargeLimits, chargeLimits } from './charge-limits.ts'
import type { Fact } from './fact.ts'
import { GWP_EDITIONS, type GwpEdition, globalWarmingPotential } from './gwp.ts'
import { type Boiling, normalBoiling } from './normal-boiling.ts'
import { type SafetyFacts, safetyFacts } from './safety.ts'

/** What is known about a refrigerant beside its properties. What is not known is absent, never guessed. */
export interface RefrigerantFacts extends SafetyFacts {
  readonly name: string
  readonly kind: 'pure' | 'blend'
  readonly composition: Fact<Readonly<Record<string, number>>>
  readonly gwp: Partial<Readonly<Record<GwpEdition, Fact<number>>>>
  /** Of the worst component. Absent: not an ozone-depleting substance as far as the list here goes. */
  readonly ozoneClass?: Fact<'I' | 'II'>
  readonly typicalUse?: Fact<string>
  /** Of an air conditioner or heat pump. */
  readonly chargeLimits?: ChargeLimits
  /** Of a factory-sealed refrigerating appliance. */
  readonly applianceChargeLimits?: ApplianceChargeLimits
  /** How it leaves the cylinder. */
  readonly cylinderRule: Fact<'as liquid, throttled to vapour into a running low side' | 'as vapour or as liquid'>
  /** At one standard atmosphere; absent where the equations cannot say, as for carbon dioxide, which sublimes there. */
  readonly normalBoiling?: Fact<Boiling>
}

const ozone = new Map(ozoneFile.rows.map((row) => [row.name, row.class as 'I' | 'II']))
const uses = new Map(usesFile.rows.map((row) => [row.name, row.use]))

const gathered = new Map<string, RefrigerantFacts>()

/**
 * Also of listed blends that cannot be computed; those lack the boiling point only.
 *
 * Computing the boiling point takes some milliseconds; the same object is returned when asked again.
 */
export function refrigerantFacts(name: string): Result<RefrigerantFacts, Problem> {
  const entry = listedAs(name)
  if (!entry) return fail(unknownName(name))
  const facts = gathered.get(entry.name) ?? gather(entry)
  gathered.set(entry.name, facts)
  return ok(facts)
}

function gather(entry: Listed): RefrigerantFacts {
  const composition = compositionOf(entry)
  const safety = safetyFacts(entry.name)
  const limits = chargeLimits(safety)
  const applianceLimits = applianceChargeLimits(safety)
  const ozoneClass = worstOzoneClass(Object.keys(composition.value))
  const use = uses.get(entry.name)
  const boiling = normalBoiling(recipeOf(entry))
  return {
    name: entry.name,
    kind: entry.kind === 'fluid' ? 'pure' : 'blend',
    composition,
    ...safety,
    gwp: gwpOf(composition.value),
    ...(ozoneClass && { ozoneClass: { value: ozoneClass, source: ozoneFile.source, confirmed: false } }),
    ...(use && { typicalUse: { value: use, source: usesFile.source, confirmed: true } }),
    ...(limits && { chargeLimits: limits }),
    ...(applianceLimits && { applianceChargeLimits: applianceLimits }),
    cylinderRule: {
      value:
        entry.kind === 'fluid' ? 'as vapour or as liquid' : 'as liquid, throttled to vapour into a running low side',
      source: 'common practice',
      confirmed: true,
    },
    ...(boiling && { normalBoiling: boiling }),
  }
}

function compositionOf(entry: Listed): RefrigerantFacts['composition'] {
  if (entry.kind === 'fluid') return { value: { [entry.name]: 1 }, source: entry.fluid.citation, confirmed: true }
  const parts = Object.entries(entry.row.massPercent).map(
    ([component, percent]) => [component, percent! / 100] as const,
  )
  return { value: Object.fromEntries(parts), source: 'ashrae34', confirmed: entry.row.confirmed !== false }
}

function gwpOf(composition: Readonly<Record<string, number>>): RefrigerantFacts['gwp'] {
  const editions = GWP_EDITIONS.map((edition) => [edition, globalWarmingPotential(composition, edition)] as const)
  return Object.fromEntries(editions.filter(([, fact]) => fact !== undefined))
}

function worstOzoneClass(components: readonly string[]): 'I' | 'II' | undefined {
  const classes = components.map((component) => ozone.get(component))
  return classes.includes('I') ? 'I' : classes.includes('II') ? 'II' : undefined
}
