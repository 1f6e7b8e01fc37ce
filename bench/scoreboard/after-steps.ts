/**
 * What the diagnosis says of plants whose charge alone is off, after two weighed steps towards the right charge:
 *
 *   npx tsx bench/scoreboard/after-steps.ts
 */
import { seeded } from '../population/random.ts'
import { broughtNearer } from './brought-nearer.ts'
import { DEVICES } from './devices.ts'
import type { Said } from './judges/our-diagnosis.ts'

const PLANTS = 100

const percent = (hits: number, of: number) => Math.round((100 * hits) / of)

for (const kind of DEVICES) {
  const plants = Array.from({ length: PLANTS }, (_, i) => broughtNearer(kind, seeded(100 + i))).filter((one) => !!one)
  const told = (name: string, of: (plant: (typeof plants)[number]) => Said) => {
    const share = (counts: (said: Said, chargeError: number) => boolean) =>
      percent(plants.filter((plant) => counts(of(plant), plant.chargeError)).length, plants.length)
    console.log(
      `${kind}, ${name}, ${plants.length} plants, %:`,
      `another trouble named ${share(({ decision }) => decision.kind === 'other')},`,
      `unexplained ${share(({ diagnosis }) => diagnosis.misfit.unexplained)},`,
      `no answer ${share(({ decision }) => decision.kind === 'read' || decision.kind === 'undecided')},`,
      `charge within its interval ${share(({ diagnosis: { charge } }, truth) => charge.low <= truth && truth <= charge.high)},`,
      `within 5 % ${share(({ diagnosis: { charge } }, truth) => Math.abs(charge.mean - truth) <= 0.05)}`,
    )
  }
  told('all sets', ({ said }) => said)
  told('newest set alone', ({ ofNewest }) => ofNewest)
}
