import type { FluidFile } from './data-file.ts'
import { fluidNamed, type Listed } from './refrigerant-name.ts'

/** What a refrigerant is made of. */
export interface Recipe {
  readonly fluids: readonly FluidFile[]
  readonly massFractions: readonly number[]
}

export function recipeOf(entry: Listed): Recipe {
  if (entry.kind === 'fluid') return { fluids: [entry.fluid], massFractions: [1] }
  const parts = Object.entries(entry.row.massPercent)
  return {
    fluids: parts.map(([component]) => fluidNamed(component)!),
    massFractions: parts.map(([, percent]) => percent! / 100),
  }
}
