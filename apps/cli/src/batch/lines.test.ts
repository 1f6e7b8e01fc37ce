import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Line, linesOf } from './lines.ts'

const bytes = (text: string) => new TextEncoder().encode(text)

async function read(chunks: readonly Uint8Array[], longest?: number): Promise<readonly Line[]> {
  async function* stream() {
    yield* chunks
  }
  const lines: Line[] = []
  for await (const some of linesOf(stream(), longest)) lines.push(...some)
  return lines
}

const texts = (lines: readonly Line[]) => lines.map((line) => ('text' in line ? line.text : undefined))

test('[property] however a stream is cut into chunks, its lines are the same', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'binary' }), fc.array(fc.nat({ max: 200 })), async (text, cuts) => {
      const whole = bytes(text)
      const edges = [0, ...cuts.map((cut) => Math.min(cut, whole.length)), whole.length].sort((a, b) => a - b)
      const pieces = edges.slice(1).map((edge, i) => whole.subarray(edges[i], edge))
      expect(await read(pieces)).toEqual(await read([whole]))
    }),
    { seed: 41, numRuns: 300 },
  )
})

test('[property] lines are numbered from 1, blank ones included, and the last needs no line break', async () => {
  expect(await read([bytes('a\n\nb')])).toEqual([
    { number: 1, text: 'a' },
    { number: 2, text: '' },
    { number: 3, text: 'b' },
  ])
  expect(texts(await read([bytes('a\r\nb\r')]))).toEqual(['a', 'b'])
  expect(await read([bytes('a\n')])).toHaveLength(1)
  expect(await read([bytes('')])).toEqual([])
})

test('[limit] bytes that are not UTF-8 spoil their own line only', async () => {
  const lines = await read([bytes('a\n'), Uint8Array.of(0xff, 0xc3, 0x28), bytes('\nb\n')])
  expect(lines[1]).toEqual({ number: 2, unreadable: { value: 'bytes that are no text', accepted: 'UTF-8' } })
  expect(texts(lines)).toEqual(['a', undefined, 'b'])
})

test('[limit] a character cut by the end of a chunk is read whole, a byte order mark is dropped', async () => {
  const whole = bytes('\uFEFF°F')
  const cut = Array.from(whole, (byte) => Uint8Array.of(byte))
  expect(texts(await read(cut))).toEqual(['°F'])
})

test('[limit] a line of 10 MB is read; one beyond the limit is refused without being kept, and the next is read', async () => {
  const long = 'x'.repeat(10_000_000)
  expect(texts(await read([bytes(`${long}\nb`)]))).toEqual([long, 'b'])
  const lines = await read([bytes('12345'), bytes('67890'), bytes('1\nb\n')], 10)
  expect(lines).toEqual([
    { number: 1, unreadable: { value: '11 bytes', accepted: 'at most 10 bytes in a line' } },
    { number: 2, text: 'b' },
  ])
})
