/** The longer side of a photo that is traced on: more shows no more of a printed chart. */
const LONGEST_PX = 2000

/** A photo as it is looked at: upright, and no larger than it needs to be. Undefined for a file that is no picture. */
export async function photoOf(file: Blob): Promise<Blob | undefined> {
  try {
    const picture = await createImageBitmap(file)
    const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.round(picture.width * scale)
    canvas.height = Math.round(picture.height * scale)
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height)
    picture.close()
    return await new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/jpeg', 0.9))
  } catch {
    return undefined
  }
}
