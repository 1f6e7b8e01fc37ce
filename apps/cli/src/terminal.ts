/** Where the program reads and writes: the process, or a test. */
export interface Terminal {
  readonly input: AsyncIterable<Uint8Array>
  /** Takes text for stdout; the promise holds the writer back while the reader is slower. */
  write(text: string): Promise<void>
  /** Takes text for stderr. */
  complain(text: string): void
  /** Characters on a line. */
  readonly columns: number
  /** The time of day, ISO 8601: a record says when it was made. */
  now(): string
}

const DEFAULT_COLUMNS = 80
/** Lines longer than this are hard to read. */
const MOST_COLUMNS = 100
const FEWEST_COLUMNS = 40

/** The terminal of this process. A reader who has seen enough (`| head`) ends the program quietly. */
export function processTerminal({ stdin, stdout, stderr }: NodeJS.Process): Terminal {
  stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    stderr.write(`chargewright: cannot write the answer: ${error.message}\n`)
    process.exit(3)
  })
  const columns = stdout.columns ?? DEFAULT_COLUMNS
  return {
    input: stdin,
    write: (text) => (stdout.write(text) ? Promise.resolve() : new Promise((resume) => stdout.once('drain', resume))),
    complain: (text) => void stderr.write(text),
    now: () => new Date().toISOString(),
    columns: Math.min(Math.max(columns, FEWEST_COLUMNS), MOST_COLUMNS),
  }
}
