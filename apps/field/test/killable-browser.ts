import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'

/** A browser of its own process group on a profile that outlives it. */
export interface KillableBrowser {
  readonly page: Page
  /** Ends every process of it at once, as an empty battery would. */
  readonly kill: () => Promise<void>
}

const EXECUTABLE = [process.env.CHROMIUM, '/usr/bin/chromium'].find((path) => path && existsSync(path))

/** Opens it; a crowded machine may need a second try. */
export async function openKillable(profile: string): Promise<KillableBrowser> {
  try {
    return await opened(profile)
  } catch {
    return opened(profile)
  }
}

async function opened(profile: string): Promise<KillableBrowser> {
  const portFile = join(profile, 'DevToolsActivePort')
  await rm(portFile, { force: true })
  const args = ['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking']
  const child = spawn(
    EXECUTABLE ?? chromium.executablePath(),
    [
      ...args,
      '--disable-component-update',
      '--disable-sync',
      // Nothing of the browser's own beside the page: no start page, and no offer to bring back what was killed.
      '--disable-extensions',
      '--disable-default-apps',
      '--hide-crash-restore-bubble',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  )
  try {
    const port = await portOf(portFile, child)
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`, { timeout: 15_000 })
    const [context] = browser.contexts()
    return {
      page: context!.pages()[0] ?? (await context!.newPage()),
      kill: () => killed(child),
    }
  } catch (error) {
    await killed(child)
    throw error
  }
}

async function portOf(file: string, child: ChildProcess): Promise<string> {
  for (let tries = 0; tries < 300; tries++) {
    if (child.exitCode !== null) throw new Error(`the browser ended with ${child.exitCode} before it could be reached`)
    const [port] = await readFile(file, 'utf8').then(
      (text) => text.split('\n'),
      () => [],
    )
    if (port) return port
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
  throw new Error('the browser could not be reached')
}

/** Resolves when the process is gone. */
function killed(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null || child.pid === undefined) return resolve()
    child.once('exit', () => resolve())
    process.kill(-child.pid, 'SIGKILL')
  })
}
