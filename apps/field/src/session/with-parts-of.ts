/**
 * Plain data, in which every part that equals its counterpart in other data is that very object. What is computed anew
 * from a whole visit differs in little from what was computed before; a part of the page that is given the same object
 * again is not drawn again.
 */
export function withPartsOf<T>(before: unknown, now: T): T {
  if (Object.is(before, now) || !isData(before) || !isData(now)) return now
  if (Array.isArray(before) !== Array.isArray(now)) return now
  const [was, is] = [before as Fields, now as Fields]
  const names = Object.keys(is)
  const parts = (Array.isArray(now) ? [] : {}) as Record<string, unknown>
  let isSame = names.length === Object.keys(was).length
  for (const name of names) {
    const part = withPartsOf(was[name], is[name])
    isSame &&= Object.hasOwn(was, name) && Object.is(part, was[name])
    parts[name] = part
  }
  return (isSame ? before : parts) as T
}

type Fields = Readonly<Record<string, unknown>>

/** An array or an object of fields; anything else, as the bytes of a photo, is taken as it is. */
function isData(value: unknown): value is object {
  if (typeof value !== 'object' || value === null) return false
  return Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype
}
