import gwpFile from '../../data/facts/gwp.json' with { type: 'json' }
import type { Fact } from './fact.ts'

/** Assessment report of the Intergovernmental Panel on Climate Change; laws name the one they mean. */
export type GwpEdition = 'AR4' | 'AR5' | 'AR6'

export const GWP_EDITIONS: readonly GwpEdition[] = ['AR4', 'AR5', 'AR6']

interface Row extends Partial<Readonly<Record<GwpEdition, number>>> {
  readonly name: string
}

const byName = new Map<string, Row>((gwpFile.rows as readonly Row[]).map((row) => [row.name, row]))
const CONFIRMED = gwpFile.status !== 'REMEMBERED'

/**
 * Global warming potential over 100 years. That of a blend is the sum of its components by mass; absent as soon as one
 * component is unknown in that edition.
 */
export function globalWarmingPotential(
  massFractions: Readonly<Record<string, number>>,
  edition: GwpEdition,
): Fact<number> | undefined {
  const parts = Object.entries(massFractions)
  let sum = 0
  for (const [name, fraction] of parts) {
    const value = byName.get(name)?.[edition]
    if (value === undefined) return undefined
    sum += fraction * value
  }
  const source = gwpFile.sources[edition]
  return { value: sum, source: parts.length === 1 ? source : `mass-weighted sum of ${source}`, confirmed: CONFIRMED }
}
