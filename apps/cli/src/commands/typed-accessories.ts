import type { Accessory } from '@chargewright/charging'
import { fail, ok, type Problem, parse, type Result } from '@chargewright/quantity'
import { unreadable } from '../failure.ts'
import { readFlags } from '../read-flags.ts'
import { typedShare } from '../typed-flag.ts'

export function typedAccessories(texts: readonly string[]): Result<readonly Accessory[], readonly Problem[]> {
  const read = readFlags(Object.fromEntries(texts.map((text, i) => [i, typedAccessory(text)])))
  return read.ok ? ok(Object.values(read.value)) : read
}

const FORM = /^\s*([\p{L}\d][\p{L}\d ’'-]{0,39}):(.+),([^,]+)$/su

/** `accumulator: 90 in³, 10 %`: a name, its volume inside, and the share of that which stands full of liquid. */
function typedAccessory(text: string): Result<Accessory, Problem> {
  const [, name, inside = '', liquid = ''] = FORM.exec(text) ?? []
  if (name === undefined) {
    return fail(unreadable('accessory', text, 'name, volume and share of liquid: "accumulator: 90 in³, 10 %"'))
  }
  const volume = parse(inside, 'volume', { field: 'accessory, volume' })
  if (!volume.ok) return volume
  const liquidShare = typedShare(liquid, 'accessory, share of liquid')
  return liquidShare.ok ? ok({ name, volume: volume.value, liquidShare: liquidShare.value }) : liquidShare
}
