import { useSignal } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'

interface Props {
  /** As many at every drawing: a part that is not there yet is nothing in its place. */
  readonly children: readonly ComponentChildren[]
}

/**
 * Draws its children one after the other, each once the frame with those before it is on the glass: what stands first
 * is there soonest, and a press meanwhile waits for one part of the page and not for all of it.
 */
export function InTurn({ children }: Props) {
  const drawn = useSignal(1)
  useEffect(() => {
    if (drawn.value < children.length) drawn.value++
  }, [drawn.value])
  return <>{children.slice(0, drawn.value)}</>
}
