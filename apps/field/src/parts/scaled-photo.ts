import type { Photo } from '../store/visit-store.ts'

/** Long side of a kept photo, px: the small print of a nameplate stays readable in a few hundred kilobytes. */
const LONG_SIDE = 1600
const QUALITY = 0.8

/** A picture file as a JPEG no larger than needed, upright; undefined where the browser cannot read it as a picture. */
export async function scaledPhoto(file: Blob): Promise<Omit<Photo, 'file'> | undefined> {
  try {
    const picture = await createImageBitmap(file)
    const scale = Math.min(1, LONG_SIDE / Math.max(picture.width, picture.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.max(1, Math.round(picture.width * scale))
    canvas.height = Math.max(1, Math.round(picture.height * scale))
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height)
    picture.close()
    const jpeg = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY))
    return jpeg ? { type: 'image/jpeg', bytes: new Uint8Array(await jpeg.arrayBuffer()) } : undefined
  } catch {
    return undefined
  }
}
