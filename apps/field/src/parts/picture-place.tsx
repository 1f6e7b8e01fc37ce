import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { useEffect } from 'preact/hooks'
import type { VisitPicturesProps } from './visit-pictures.tsx'

/** From this width of the window on, the large sheet fits. */
const WIDE = '(min-width: 64rem)'

/** The place of the pictures. They come after the words: what draws them is loaded when the page already answers. */
export function PicturePlace(shown: Omit<VisitPicturesProps, 'wide'>) {
  const Pictures = useSignal<ComponentType<VisitPicturesProps> | undefined>(undefined)
  const wide = useSignal(matchMedia(WIDE).matches)
  useEffect(() => {
    // Without them the page is whole all the same: each figure of theirs stands in the finding, too.
    import('./visit-pictures.tsx').then(
      ({ VisitPictures }) => {
        Pictures.value = VisitPictures
      },
      () => undefined,
    )
    const room = matchMedia(WIDE)
    const follow = () => {
      wide.value = room.matches
    }
    room.addEventListener('change', follow)
    return () => room.removeEventListener('change', follow)
  }, [])
  return Pictures.value ? <Pictures.value {...shown} wide={wide.value} /> : null
}
