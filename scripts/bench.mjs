#!/usr/bin/env node
/**
 * Runs the benchmarks, each in a process of its own so that none warms up another.
 *
 *   npm run bench                  all of them
 *   npm run bench -- refrigerant   one of them
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'

const asked = process.argv.slice(2)
const parts = readdirSync('bench').filter((part) => existsSync(`bench/${part}/index.ts`))
const unknown = asked.filter((part) => !parts.includes(part))

if (unknown.length > 0) {
  process.stderr.write(`No benchmark ${unknown.join(', ')}; there are ${parts.join(', ')}\n`)
  process.exitCode = 2
} else {
  for (const part of asked.length > 0 ? asked : parts) {
    const { status } = spawnSync('npx', ['tsx', `bench/${part}/index.ts`], { stdio: 'inherit' })
    if (status !== 0) process.exitCode = 1
  }
}
