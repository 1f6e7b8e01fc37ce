import type { Terminal } from '../src/terminal.ts'

/** A terminal for tests: stdin and the time are given, stdout and stderr are kept. */
export function scriptedTerminal(
  stdin: string | Uint8Array = '',
): Terminal & { readonly out: string; readonly err: string } {
  const bytes = typeof stdin === 'string' ? new TextEncoder().encode(stdin) : stdin
  const written = { out: '', err: '' }
  return {
    columns: 80,
    now: () => '2026-07-01T12:00:00Z',
    get out() {
      return written.out
    },
    get err() {
      return written.err
    },
    input: (async function* () {
      yield bytes
    })(),
    write: async (text) => {
      written.out += text
    },
    complain: (text) => {
      written.err += text
    },
  }
}
