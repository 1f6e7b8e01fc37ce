import { readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { describe, expect, test } from 'vitest'

/** Every module that the population's drawing reaches, by the path or the package name that is imported. */
function reached(from: string, seen = new Set<string>()): Set<string> {
  if (seen.has(from)) return seen
  seen.add(from)
  for (const [, path] of readFileSync(from, 'utf8').matchAll(/from '([^']+)'/g)) {
    if (path!.startsWith('.')) reached(normalize(join(dirname(from), path!)), seen)
    else seen.add(path!)
  }
  return seen
}

describe('the population that judges the twin', () => {
  const all = [...reached('bench/population/draw-cases.ts')]

  test('[property] stands on the refrigerants alone and on nothing of the twin or the diagnosis', () => {
    expect(all.filter((path) => path.includes('packages/') || !path.startsWith('bench/population/'))).toEqual([
      '@chargewright/refrigerant',
    ])
  })

  test('[property] is reached whole from where cases are drawn', () => {
    for (const part of ['coil', 'compressor-law', 'device-law', 'design', 'operate', 'tool-bag']) {
      expect(all).toContain(`bench/population/${part}.ts`)
    }
  })
})
