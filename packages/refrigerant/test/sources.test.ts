import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')
const bibliography = readFileSync(join(root, 'data/sources.bib'), 'utf8')
const known = new Set([...bibliography.matchAll(/^@\w+\{([^,]+),/gm)].map((match) => match[1]))

function filesUnder(folder: string, extension: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(extension))
    .map((name) => join(folder, name))
}

describe('sources', () => {
  it('[property] every citation of a data file resolves, and the file is named after it', () => {
    const dataFiles = filesUnder('data', '.json').filter((name) => !name.includes('facts'))
    expect(dataFiles.length).toBeGreaterThan(60)
    for (const name of dataFiles) {
      const { citation } = JSON.parse(readFileSync(join(root, name), 'utf8')) as { citation: string }
      expect(known, name).toContain(citation)
      if (!name.endsWith('blends.json')) expect(name).toContain(citation)
    }
  })

  it('[property] every source of a fact resolves or says common practice', () => {
    for (const name of filesUnder('data/facts', '.json')) {
      const file = JSON.parse(readFileSync(join(root, name), 'utf8')) as {
        source?: string
        sources?: Record<string, string>
      }
      const keys = [file.source, ...Object.values(file.sources ?? {})].filter((key) => key !== undefined)
      expect(keys.length, name).toBeGreaterThan(0)
      for (const key of keys) expect(['common practice', ...known], name).toContain(key)
    }
  })

  it('[property] every [key] in the code resolves', () => {
    const keys = filesUnder('src', '.ts').flatMap((name) => {
      const text = readFileSync(join(root, name), 'utf8')
      return [...text.matchAll(/@source[^\n]*\[([a-z0-9-]+)\]/g)].map((match) => match[1])
    })
    expect(keys.length).toBeGreaterThan(2)
    for (const key of keys) expect(known).toContain(key)
  })
})
