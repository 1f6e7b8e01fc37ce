import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Engine } from './engine.ts'

/** The one engine of the page, set where the page starts. */
export const EngineContext = createContext<Engine | undefined>(undefined)

export function useEngine(): Engine {
  const engine = useContext(EngineContext)
  if (!engine) throw new Error('No engine: a part that asks it stands outside of EngineContext.Provider')
  return engine
}
