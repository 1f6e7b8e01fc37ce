import { useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'

/** From this width of the window on, the large sheet of a picture fits. */
const WIDE = '(min-width: 64rem)'

/** Whether there is room for the large sheet, as the window is turned or drawn. */
export function useWide(): boolean {
  const wide = useSignal(matchMedia(WIDE).matches)
  useEffect(() => {
    const room = matchMedia(WIDE)
    const follow = () => {
      wide.value = room.matches
    }
    room.addEventListener('change', follow)
    return () => room.removeEventListener('change', follow)
  }, [])
  return wide.value
}
