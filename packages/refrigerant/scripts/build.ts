import { join } from 'node:path'
import { buildPackage } from './build-package.ts'

await buildPackage(join(import.meta.dirname, '../dist'))
