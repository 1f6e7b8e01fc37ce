import { departureFiles, pairFiles } from './data.ts'
import type { FluidFile, PairRow, ResidualPart } from './data-file.ts'
import { forEachPair, type PairData } from './mixture/mixture-model.ts'

const rows = new Map<string, PairRow>(pairFiles.flatMap(({ pairs }) => pairs.map((row) => [key(row[0], row[1]), row])))
const departures = new Map<string, ResidualPart>(
  departureFiles.flatMap((file) => file.departures.map((departure) => [departure.name, departure])),
)

/** Mixing parameters for every pair of the components in order, or the names of the pairs that nobody has published. */
export function pairsOf(
  components: readonly FluidFile[],
):
  | { readonly kind: 'complete'; readonly pairs: readonly PairData[] }
  | { readonly kind: 'missing'; readonly names: readonly string[] } {
  const pairs: PairData[] = []
  const missing: string[] = []
  forEachPair(components.length, (i, j) => {
    const a = components[i]!.name
    const b = components[j]!.name
    const row = rows.get(key(a, b)) ?? swapped(rows.get(key(b, a)))
    if (row) pairs.push({ row, departure: row[7] === null ? undefined : departures.get(row[7]) })
    else missing.push(`${a}/${b}`)
  })
  return missing.length === 0 ? { kind: 'complete', pairs } : { kind: 'missing', names: missing }
}

function key(i: string, j: string): string {
  return `${i}|${j}`
}

/** The betas belong to an order: β_ji = 1/β_ij. */
function swapped(row: PairRow | undefined): PairRow | undefined {
  if (!row) return undefined
  const [i, j, betaT, gammaT, betaV, gammaV, F, departure] = row
  return [j, i, 1 / betaT, gammaT, 1 / betaV, gammaV, F, departure]
}
