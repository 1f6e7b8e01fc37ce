import { expect, type Locator, type Page } from '@playwright/test'
import { openDemo } from '../../test/field-app.ts'
import type { Screen, Stretch } from './screen.ts'

export const PICTURES: Stretch = {
  title: 'Drawn from the readings',
  screens: [
    picture(
      'superheat',
      'orifice-add',
      'Superheat against its target',
      'Superheat against its target, with the band and the distance to go.',
    ),
    picture('makers-chart', 'orifice-makers-chart', 'Superheat', 'The same against a maker’s own chart.'),
    picture('subcooling', 'valve-subcooling-add', 'Subcooling', 'Subcooling against its target.'),
    picture('steps', 'step-by-step', 'Weighed steps', 'The weighed steps so far.'),
    picture('closing', 'step-by-step', 'Closing on the charge', 'How the steps close on the charge.'),
    picture(
      'enthalpy',
      'step-by-step',
      'Pressure and enthalpy',
      'Pressure and enthalpy of this refrigerant, with this cycle.',
    ),
    picture('enthalpy-glide', 'glide-r407c', 'Pressure and enthalpy', 'The same for a blend with glide.'),
    {
      ...picture('enthalpy', 'step-by-step', 'Pressure and enthalpy', 'The same in a dim plant room.'),
      name: 'picture-enthalpy-dim',
      theme: 'dim',
    },
  ],
}

function picture(name: string, example: string, title: string, about: string): Screen {
  const open = async (page: Page): Promise<Locator> => {
    await openDemo(page, `demo-${example}`)
    const shown = page.locator('.picture', { has: page.getByRole('heading', { name: title }) }).first()
    await expect(shown.locator('svg')).toBeVisible()
    return shown
  }
  return { name: `picture-${name}`, about, open }
}
