/**
 * A clock that never goes backwards while the page lives: when the clock of the device is set back, it goes on by what
 * passed since. (A sleeping device may stop that count, so it never runs ahead of the device.)
 */
export function steadyNow(wall: () => number, passed: () => number): () => number {
  let latest = wall()
  let at = passed()
  return () => {
    const went = passed()
    latest = Math.max(wall(), latest + Math.max(0, went - at))
    at = went
    return latest
  }
}
