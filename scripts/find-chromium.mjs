#!/usr/bin/env node
/**
 * Finds a Chromium for the browser tests, or gets one.
 *
 *   node scripts/find-chromium.mjs                  prints its path
 *   node scripts/find-chromium.mjs npm run …        runs the command with that path in $CHROMIUM
 */
import { spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { pathToFileURL } from 'node:url'

/** Tried in order, the cheapest first: what was named, what is installed, what can be installed. */
const SOURCES = [() => process.env.CHROMIUM, () => '/usr/bin/chromium', playwrightsOwn, debianPackage, npmPackage]

/** The path of a Chromium that is there, or undefined. */
export async function findChromium() {
  for (const source of SOURCES) {
    const path = await source()
    if (path && isExecutable(path)) return path
  }
  return undefined
}

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

async function playwrightsOwn() {
  const { chromium } = await import('@playwright/test')
  return chromium.executablePath()
}

function debianPackage() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined
  say('No Chromium found. Installing the one of Debian (apt-get install chromium).')
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  run('apt-get', ['update', '-qq'], env)
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], env)
  return '/usr/bin/chromium'
}

async function npmPackage() {
  say('No Chromium found. Fetching the npm package @sparticuz/chromium (67 MB); package.json stays as it is.')
  // Without scripts: this is called from one, and must not start the workspace's own `prepare` again.
  run('npm', ['install', '--no-save', '--ignore-scripts', '@sparticuz/chromium@153'], process.env)
  // The package unpacks the system libraries that Chromium needs only where it believes to run in such a function.
  process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs22.x'
  try {
    const { default: chromium } = await import('@sparticuz/chromium')
    return await chromium.executablePath()
  } catch (error) {
    say(`@sparticuz/chromium could not be used: ${error.message}`)
    return undefined
  }
}

/** Runs a command with its output on stderr, because stdout is for the path alone. */
function run(command, args, env) {
  return spawnSync(command, args, { env, stdio: ['ignore', 2, 2] }).status
}

function say(text) {
  process.stderr.write(`${text}\n`)
}

async function main([command, ...args]) {
  const path = await findChromium()
  if (!path) {
    say('No Chromium found and none could be installed. Install one and name it: CHROMIUM=/path/to/chromium')
    return 1
  }
  if (command === undefined) {
    process.stdout.write(`${path}\n`)
    return 0
  }
  const { status } = spawnSync(command, args, { env: { ...process.env, CHROMIUM: path }, stdio: 'inherit' })
  return status ?? 1
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) process.exitCode = await main(process.argv.slice(2))
