import type { Catalogue } from '@chargewright/quantity'
import { SPANISH_AREAS } from '@chargewright/report'

/** What the page of an assessment says besides the packages. */
export const PAGE: Catalogue = {
  'no method yet': 'todavía sin método',
  Do: 'Haga',
  'Enter next': 'Ingrese ahora',
  'Left out, because it cannot be read': 'Se dejó fuera, porque no se puede leer',
  'In doubt, but used': 'Dudoso, pero se usa',
  '{0} (entry {1})': '{0} (entrada {1})',
  Because: 'Porque',
  Method: 'Método',
  Conditions: 'Condiciones',
  'Could look the same': 'Podría verse igual',
  'Take care': 'Tenga cuidado',
  met: 'se cumple',
  'in doubt': 'dudosa',
  'not met': 'no se cumple',
  'explains it': 'lo explica',
  excluded: 'descartada',
}

/** The Spanish of the trade: the words of the packages, and our own. */
export const SPANISH: Catalogue = Object.assign({}, ...SPANISH_AREAS, PAGE)
