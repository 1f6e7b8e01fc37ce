import { useEffect, useRef } from 'preact/hooks'

/** Why a form was not taken. It comes into view when it appears: the press may have been far above it. */
export function Trouble({ children }: { readonly children: string }) {
  const shown = useRef<HTMLParagraphElement>(null)
  useEffect(() => shown.current?.scrollIntoView({ block: 'nearest' }), [])
  return (
    <p class="trouble" role="alert" ref={shown}>
      {children}
    </p>
  )
}
