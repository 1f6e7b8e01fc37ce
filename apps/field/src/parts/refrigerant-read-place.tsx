import type { RefrigerantReadProps } from './refrigerant-read.tsx'
import { useLazy } from './use-lazy.ts'

/** The place under a refrigerant's blank for what was understood; what fills it is loaded with the first name. */
export function RefrigerantReadPlace(props: RefrigerantReadProps) {
  const Read = useLazy(props.typed !== '', async () => (await import('./refrigerant-read.tsx')).RefrigerantRead)
  return Read ? <Read {...props} /> : null
}
