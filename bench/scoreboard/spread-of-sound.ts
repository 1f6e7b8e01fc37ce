import { drawCases } from '../population/draw-cases.ts'
import { DEVICES } from './devices.ts'
import { measured } from './judges/measured.ts'

/*
 * How far sound systems read from what their maker printed: subcooling from the nameplate behind a valve, superheat from the
 * chart behind a fixed device; seen half. `npx tsx bench/scoreboard/spread-of-sound.ts`
 */
const K_IN_F = 1.8

for (const kind of DEVICES) {
  const apart: number[] = []
  for (const each of drawCases({ kind, half: 'seen', count: 400, seed: 77 })) {
    if (each.truth.troubles.length > 0) continue
    const { superheat, subcooling } = measured(each)
    const [read, printed] =
      kind === 'thermostatic' ? [subcooling, each.plate.subcooling_K] : [superheat, each.makersSuperheat_K]
    if (read !== undefined && printed !== undefined) apart.push(K_IN_F * (read - printed))
  }
  const mean = apart.reduce((sum, x) => sum + x, 0) / apart.length
  const sd = Math.sqrt(apart.reduce((sum, x) => sum + (x - mean) ** 2, 0) / apart.length)
  const beyond = apart.filter((x) => Math.abs(x) > 3).length / apart.length
  const share = `${Math.round(100 * beyond)} % beyond 3 °F`
  console.log(`${kind}: ${apart.length} systems, mean ${mean.toFixed(1)} °F, sd ${sd.toFixed(1)} °F, ${share}`)
}
