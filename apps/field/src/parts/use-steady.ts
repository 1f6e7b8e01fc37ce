import { useRef, useState } from 'preact/hooks'

/** An act that is the same function at every drawing and does what the last drawing says, so that who is given it is not drawn again for it. */
export function useSteady<Given extends readonly unknown[], Gotten>(
  act: (...given: Given) => Gotten,
): (...given: Given) => Gotten {
  const latest = useRef(act)
  latest.current = act
  return useState(
    () =>
      (...given: Given) =>
        latest.current(...given),
  )[0]
}
