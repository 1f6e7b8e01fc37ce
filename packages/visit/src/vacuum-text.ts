/** What a vacuum gauge shows, as it is parsed: one that shows Pa, hPa, kPa or mbar shows them absolute. */
export function vacuumText(typed: string): string {
  return typed.replace(/(?:[hk]?Pa|mbar)\s*$/i, '$& a')
}
