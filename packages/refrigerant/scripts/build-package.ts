import { execFileSync } from 'node:child_process'
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { build } from 'esbuild'

const here = join(import.meta.dirname, '..')
const root = join(here, '../..')
const TYPES = './types/refrigerant/src/index.d.ts'

/**
 * Makes a package that stands alone: one module without dependencies, its types, this README, the licence and the
 * bibliography. What it needs of `quantity` is put in.
 *
 * @param folder is emptied first
 */
export async function buildPackage(folder: string): Promise<void> {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  await build({
    entryPoints: [join(here, 'src/index.ts')],
    outfile: join(folder, 'index.js'),
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    target: 'es2022',
    charset: 'utf8',
    minifySyntax: true,
    logLevel: 'error',
  })
  const types = join(folder, 'types')
  const compiler = join(root, 'node_modules/.bin/tsc')
  execFileSync(compiler, ['-p', join(here, 'tsconfig.build.json'), '--outDir', types])
  for (const file of filesUnder(types)) writeFileSync(file, withinTypes(readFileSync(file, 'utf8'), file, types))
  const { name, version, license } = JSON.parse(readFileSync(join(here, 'package.json'), 'utf8')) as Record<
    string,
    string
  >
  const manifest = {
    name,
    version,
    description: 'Properties of refrigerants and their blends from published equations of state',
    type: 'module',
    license,
    sideEffects: false,
    engines: { node: '>=20' },
    exports: { '.': { types: TYPES, default: './index.js' } },
    // For resolvers that know no exports.
    main: './index.js',
    types: TYPES,
    files: ['index.js', 'types', 'docs', 'sources.bib'],
  }
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify(manifest, undefined, 2)}\n`)
  copyFileSync(join(here, 'README.md'), join(folder, 'README.md'))
  copyFileSync(join(here, 'data/sources.bib'), join(folder, 'sources.bib'))
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'))
  mkdirSync(join(folder, 'docs'))
  copyFileSync(join(here, 'docs/leak.svg'), join(folder, 'docs/leak.svg'))
}

/** Declarations that refer to each other by relative paths with the ending of the module, as a stranger's compiler wants. */
function withinTypes(text: string, file: string, types: string): string {
  const quantity = relative(dirname(file), join(types, 'quantity/src/index.js'))
  return text
    .replaceAll(/(['"])@chargewright\/quantity\1/g, `'${quantity}'`)
    .replaceAll(/(from |import\()(['"])(\.[^'"]*)\.ts\2/g, "$1'$3.js'")
}

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.d.ts'))
    .map((name) => join(folder, name))
}
