import { findRefrigerant } from '@chargewright/refrigerant'

/** The refrigerant's designation however it is spelt, so that `R410A` and `r-410a` are one; an unlisted name as given. */
export function designation(name: string): string {
  const found = findRefrigerant(name)
  // The problem quotes the designation of a blend that is listed but cannot be computed, else the name as asked for.
  return found.ok ? found.value.name : String(found.error.value).trim()
}
