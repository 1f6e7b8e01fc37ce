let isDown = false
addEventListener('pointerdown', () => (isDown = true), { capture: true })
for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => (isDown = false), { capture: true })

/**
 * Does something when the press that goes on now is over. What changes its height while a finger or a mouse is down
 * would move the thing that is being pressed away from under it, and the press would be lost.
 */
export function afterPress(act: () => void): void {
  if (isDown) addEventListener('pointerup', () => setTimeout(act), { once: true })
  else setTimeout(act)
}
