import { type Problem, parse } from '@chargewright/quantity'
import type { SystemFacts } from '@chargewright/visit'
import type { Accessory } from './accessory-charge.ts'

/** The parts that were added to a system, as they were stated; one whose volume cannot be read is left out and told. */
export function statedAccessories({ accessories = [] }: SystemFacts): {
  readonly accessories: readonly Accessory[]
  readonly problems: readonly Problem[]
} {
  const read = accessories.map(({ name, volume, liquidPercent }) => {
    const inside = parse(volume, 'volume', { field: `${name}, inside volume` })
    return inside.ok
      ? { ok: true as const, value: { name, volume: inside.value, liquidShare: liquidPercent / 100 } }
      : inside
  })
  return {
    accessories: read.flatMap((each) => (each.ok ? [each.value] : [])),
    problems: read.flatMap((each) => (each.ok ? [] : [each.error])),
  }
}
