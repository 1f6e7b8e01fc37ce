import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { FOLDER } from './keep-picture.ts'
import type { Screen } from './screen.ts'
import { STRETCHES } from './stretches.ts'

/** Writes the page that shows the screens in the order of a visit. */
export function listScreens(): void {
  mkdirSync(FOLDER, { recursive: true })
  const kept = readdirSync(FOLDER)
  const stretches = STRETCHES.map(({ title, screens }) =>
    [`## ${title}`, ...screens.map((screen) => shown(screen, kept))].join('\n\n'),
  )
  writeFileSync(join(FOLDER, 'README.md'), `${[HEAD, ...stretches].join('\n\n')}\n`)
}

const HEAD = `# Every screen, in the order of a visit

On a phone (390 × 844) and on a desk (1280 × 800). What is longer than the glass of a phone is shown to its end.
The systems, people and readings are invented. \`npm run screens\` takes them all again.`

function shown({ name, about, whole }: Screen, kept: readonly string[]): string {
  const alt = about.replaceAll('"', '&quot;')
  const pictures = [
    `<img src="${name}-phone.webp" width="195" alt="${alt} On a phone.">`,
    `<img src="${name}-desk.webp" width="600" alt="${alt} On a desk.">`,
  ]
  const strips = kept.filter((file) => file.startsWith(`${name}-whole-`)).toSorted()
  const long = whole && `The page on a phone, from top to bottom: ${strips.map(linked).join(', ')}.`
  return [about, pictures.join('\n'), ...(long ? [long] : [])].join('\n\n')
}

const linked = (file: string, i: number): string => `[${i + 1}](${file})`
