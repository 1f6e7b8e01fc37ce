import { mkdirSync, writeFileSync } from 'node:fs'
import { FOLDER } from './keep-picture.ts'
import type { Screen } from './screen.ts'
import { STRETCHES } from './stretches.ts'

/** Writes the page that shows the screens in the order of a visit. */
export function listScreens(): void {
  mkdirSync(FOLDER, { recursive: true })
  const stretches = STRETCHES.map(({ title, screens }) => [`## ${title}`, ...screens.map(shown)].join('\n\n'))
  writeFileSync(new URL('README.md', FOLDER), `${[HEAD, ...stretches].join('\n\n')}\n`)
}

const HEAD = `# Every screen, in the order of a visit

On a phone (390 × 844) and on a desk (1280 × 800). The systems, people and readings are invented.
\`npm run screens\` takes them all again.`

function shown({ name, about, whole }: Screen): string {
  const pictures = ['phone', 'desk'].map((where) => {
    const width = where === 'phone' ? 'width="195"' : 'width="600"'
    return `<img src="${name}-${where}.png" ${width} alt="${about.replaceAll('"', '&quot;')} On a ${where}.">`
  })
  const long = whole ? `\n\nFrom top to bottom: [phone](${name}-whole-phone.png), [desk](${name}-whole-desk.png).` : ''
  return `${about}\n\n${pictures.join(' ')}${long}`
}
