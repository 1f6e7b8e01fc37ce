import { checkVisitFile, type VisitFile } from '@chargewright/visit'

/** They are data and no script, so that a page does not wait for them. */
const addresses: Readonly<Record<string, string>> = import.meta.glob('../../../../examples/*.json', {
  eager: true,
  query: '?url',
  import: 'default',
})

/** The visits to invented systems that come with the app. */
export async function demoVisits(): Promise<readonly VisitFile[]> {
  // Each is checked as it arrives: all at once would hold a slow phone up.
  const files = await Promise.all(
    Object.values(addresses).map(async (address) => checkVisitFile(await (await fetch(address)).json())),
  )
  return files.flatMap((checked) => (checked.ok ? [checked.value] : []))
}
