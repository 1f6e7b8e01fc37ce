/** Every text of a definition, in reading order, one to a line. */
export function definitionText(node: unknown): string {
  if (typeof node === 'string') return `${node}\n`
  if (Array.isArray(node)) return node.map(definitionText).join('')
  if (node === null || typeof node !== 'object') return ''
  const { text, stack, columns, table } = node as Record<string, unknown>
  const body = (table as { body?: unknown } | undefined)?.body
  return [text, stack, columns, body].map(definitionText).join('')
}
