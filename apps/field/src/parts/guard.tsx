import type { ComponentChildren } from 'preact'
import { useErrorBoundary } from 'preact/hooks'

interface Props {
  /** Drawn instead, when the children cannot be. */
  readonly fallback: ComponentChildren
  readonly children: ComponentChildren
}

/** Keeps what cannot be drawn from taking the rest of the page with it: a row of a newer version, for instance. */
export function Guard({ fallback, children }: Props) {
  const [error] = useErrorBoundary()
  return error === undefined ? children : fallback
}
