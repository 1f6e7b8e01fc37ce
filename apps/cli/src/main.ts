import { run } from './cli.ts'
import { processTerminal } from './terminal.ts'

process.exitCode = await run(process.argv.slice(2), processTerminal(process))
