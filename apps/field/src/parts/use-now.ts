import { useSignal } from '@preact/signals'
import { useEffect, useMemo } from 'preact/hooks'
import { steadyNow } from '../session/steady-now.ts'

const TICK_MS = 1000

/** The time now, second by second, in milliseconds since 1970. */
export function useNow(): number {
  const read = useMemo(
    () =>
      steadyNow(
        () => Date.now(),
        () => performance.now(),
      ),
    [],
  )
  const now = useSignal(read())
  useEffect(() => {
    const tick = () => (now.value = read())
    const ticking = setInterval(tick, TICK_MS)
    // A page that was out of sight or asleep is late.
    document.addEventListener('visibilitychange', tick)
    return () => {
      clearInterval(ticking)
      document.removeEventListener('visibilitychange', tick)
    }
  }, [])
  return now.value
}
