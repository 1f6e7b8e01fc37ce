import { spawn, spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'

const PORT = Number(process.env.FIELD_PORT ?? 4184)
const APP = new URL('../../apps/field/', import.meta.url)

export const ADDRESS = `http://localhost:${PORT}/`

/** The browser that was named, else the one of the system; without either, Playwright has its own. */
export const CHROMIUM = [process.env.CHROMIUM, '/usr/bin/chromium'].find((path) => path && existsSync(path))

/** Builds the app and serves it until it is told to stop. */
export async function serve(): Promise<() => void> {
  spawnSync('npx', ['vite', 'build', '--logLevel', 'error'], { cwd: APP, stdio: 'inherit' })
  const serving = ['vite', 'preview', '--port', `${PORT}`, '--strictPort', '--logLevel', 'error']
  const server = spawn('npx', serving, { cwd: APP, stdio: 'inherit', detached: true })
  const stop = () => {
    if (server.pid !== undefined) process.kill(-server.pid)
  }
  for (let tries = 0; tries < 100; tries++) {
    const answers = await fetch(ADDRESS).then(
      () => true,
      () => false,
    )
    if (answers) return stop
    await new Promise((resolve) => setTimeout(resolve, 200))
  }
  stop()
  throw new Error(`nothing answers at ${ADDRESS}`)
}
