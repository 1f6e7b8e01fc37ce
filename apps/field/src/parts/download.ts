/** Hands a file to the browser to be saved. */
export function download({ name, json }: { readonly name: string; readonly json: string }): void {
  const address = URL.createObjectURL(new Blob([json], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
