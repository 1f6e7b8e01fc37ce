/** Whether the refrigerant burns. */
export function isFlammable(name: string): boolean {
  return ['R-32', 'R-454B', 'R-290', 'R-600a', 'R-1234yf'].includes(name)
}
