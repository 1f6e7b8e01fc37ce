import { closedLoop } from './closed-loop.ts'

const units = Number(process.argv[2] ?? 200)
const seed = Number(process.argv[3] ?? 20260)

console.log(`closed loop, ${units} units per device, seed ${seed}: final charge against right charge`)
for (const kind of ['fixed-orifice', 'capillary', 'thermostatic'] as const) {
  const { refused, startRms, rule, twin } = closedLoop(kind, units, seed)
  console.log(`${kind}: start ${percent(startRms)} rms, ${refused} not modelled`)
  for (const [name, p] of [
    ['plain rule', rule],
    ['twin', twin],
  ] as const) {
    console.log(
      `  ${name.padEnd(10)} rms ${percent(p.rms)}, within 5 %: ${percent(p.within5)}, within 10 %: ${percent(p.within10)}, ` +
        `steps ${p.medianSteps} median ${p.meanSteps.toFixed(1)} mean, harmful ${p.harmful}${name === 'twin' ? `, first interval holds the truth: ${percent(p.coverage)}` : ''}`,
    )
  }
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`
}
