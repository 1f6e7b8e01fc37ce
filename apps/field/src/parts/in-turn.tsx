import { useSignal } from '@preact/signals'
import { type ComponentChildren, toChildArray } from 'preact'
import { useEffect } from 'preact/hooks'

/**
 * Draws its children one after the other, each once the frame with those before it is on the glass: what stands first
 * is there soonest, and a press meanwhile waits for one part of the page and not for all of it.
 */
export function InTurn({ children }: { readonly children: ComponentChildren }) {
  const parts = toChildArray(children)
  const drawn = useSignal(1)
  useEffect(() => {
    if (drawn.value < parts.length) drawn.value++
  }, [drawn.value])
  return <>{parts.slice(0, drawn.value)}</>
}
