import { checkVisitFile, type VisitFile } from '@chargewright/visit'

const files = import.meta.glob('../../../../examples/*.json', { eager: true, import: 'default' })

/** The visits to invented systems that come with the app. */
export function demoVisits(): readonly VisitFile[] {
  return Object.values(files).flatMap((data) => {
    const checked = checkVisitFile(data)
    return checked.ok ? [checked.value] : []
  })
}
