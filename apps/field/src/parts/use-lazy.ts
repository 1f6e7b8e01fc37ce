import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { useEffect } from 'preact/hooks'

/**
 * A part of the page that is loaded when it is wanted; undefined until it is there. Once the app is kept for work
 * without a network, so is every part of it.
 */
export function useLazy<Props>(
  isWanted: boolean,
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> | undefined {
  const Part = useSignal<ComponentType<Props> | undefined>(undefined)
  useEffect(() => {
    if (!isWanted || Part.value) return
    load().then(
      (part) => {
        Part.value = part
      },
      // A page that lost its network while it loaded goes without; the next wish asks again.
      () => undefined,
    )
  }, [isWanted])
  return Part.value
}
