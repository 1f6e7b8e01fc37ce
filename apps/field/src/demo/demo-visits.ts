import { checkVisitFile, type VisitFile } from '@chargewright/visit'

/** The visits to invented systems that come with the app, in one file beside it: data and no script. */
export async function demoVisits(): Promise<readonly VisitFile[]> {
  const files: readonly unknown[] = await (await fetch('demo-visits.json')).json()
  const visits: VisitFile[] = []
  for (const file of files) {
    const checked = checkVisitFile(file)
    if (checked.ok) visits.push(checked.value)
    // Checked one by one, with room for a press between them: all at once would hold a slow phone up.
    await new Promise((resolve) => setTimeout(resolve))
  }
  return visits
}
