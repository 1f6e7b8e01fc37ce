/** How this device shows things, by name, as the browser keeps it. */
export interface SettingsShelf {
  readonly all: () => Readonly<Record<string, string>>
  /** Adds those that are not set here, and tells how many. */
  readonly addMissing: (settings: Readonly<Record<string, string>>) => number
}

/** Every name of ours in the browser's store begins so. */
const OURS = 'chargewright.'

/** The browser may refuse its store, even to be named; then there are no settings, and none are added. */
export function settingsShelf(shelf: () => Storage): SettingsShelf {
  return {
    all: () => {
      try {
        const kept = shelf()
        const names = Array.from({ length: kept.length }, (_, i) => kept.key(i)!).filter((name) =>
          name.startsWith(OURS),
        )
        return Object.fromEntries(names.map((name) => [name, kept.getItem(name)!]))
      } catch {
        return {}
      }
    },
    addMissing: (settings) => {
      let added = 0
      try {
        for (const [name, value] of Object.entries(settings)) {
          if (!name.startsWith(OURS) || shelf().getItem(name) !== null) continue
          shelf().setItem(name, value)
          added++
        }
      } catch {
        // What could not be added has to be chosen here.
      }
      return added
    },
  }
}
