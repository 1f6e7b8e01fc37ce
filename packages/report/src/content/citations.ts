/** Numbers sources as they come up, so that each is printed once, at the end. */
export interface Citations {
  /** The number of a source. */
  readonly cite: (source: string) => number
  readonly sources: () => readonly string[]
}

export function citations(): Citations {
  const sources: string[] = []
  const cite = (source: string) => {
    if (!sources.includes(source)) sources.push(source)
    return sources.indexOf(source) + 1
  }
  return { cite, sources: () => [...sources] }
}
