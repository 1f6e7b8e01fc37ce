import { blends, fluidFiles } from './data.ts'
import type { BlendRow, FluidFile } from './data-file.ts'

export type Listed =
  | { readonly kind: 'fluid'; readonly name: string; readonly fluid: FluidFile }
  | { readonly kind: 'blend'; readonly name: string; readonly row: BlendRow }

/** Everything that has a designation here, whether or not it can be computed. */
export const listed: readonly Listed[] = [
  ...fluidFiles.map((fluid) => ({ kind: 'fluid' as const, name: fluid.name, fluid })),
  ...blends.map((row) => ({ kind: 'blend' as const, name: row.name, row })),
].sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }))

/** Trade habit drops the letter of the only blend in use; the standard does not (*common practice*). */
const HABITS: Readonly<Record<string, string>> = { '507': 'R-507A' }

const byKey = new Map<string, Listed>()
for (const entry of listed) {
  byKey.set(keyOf(entry.name), entry)
  if (entry.kind === 'fluid') for (const alias of entry.fluid.aliases) byKey.set(keyOf(alias), entry)
}
for (const [habit, name] of Object.entries(HABITS)) byKey.set(habit, byKey.get(keyOf(name))!)

/** Finds an entry by what people write: `R410A`, `r-410a`, `410a`, `propane`, `CO2`, `R1234ze`. */
export function listedAs(name: string): Listed | undefined {
  return byKey.get(keyOf(name))
}

/** The equation of a pure fluid by any of its names. */
export function fluidNamed(name: string): FluidFile | undefined {
  const entry = listedAs(name)
  return entry?.kind === 'fluid' ? entry.fluid : undefined
}

/** What was meant by a name: the designation, else the listed ones that it could stand for. */
export type NameRead =
  | { readonly kind: 'read'; readonly name: string }
  | { readonly kind: 'unclear'; readonly near: readonly string[] }

/** `410a` is R-410A; `410` could be R-410A or R-410B, and is not guessed. */
export function readRefrigerantName(typed: string): NameRead {
  const entry = listedAs(typed)
  return entry ? { kind: 'read', name: entry.name } : { kind: 'unclear', near: similarNames(typed) }
}

/** Names that begin like the one asked for, as far as any does: `407` and `407x` both name R-407A and its like. */
export function similarNames(name: string): readonly string[] {
  for (let key = keyOf(name); key.length >= SHORTEST; key = key.slice(0, -1)) {
    const near = listed.map((entry) => entry.name).filter((candidate) => keyOf(candidate).startsWith(key))
    if (near.length > 0) return near
  }
  return []
}

/** Fewer characters than these name too many to be of help. */
const SHORTEST = 2

/** Letters and digits only, without the R or the family letters in front of a number. */
function keyOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '')
    .replace(/^(?:hcfc|hcfo|hfc|hfo|cfc|hc|r)(?=[ec]?\d)/, '')
}
