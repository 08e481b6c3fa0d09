import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { jetDiameter, jets, openArea } from './quantities.ts'

/** Area of the rotor cooling jets and the turbocharger's restrictor together. */
export const about = {
  name: 'Area of jets and restrictor',
  in: { jets, jet: jetDiameter, restrictor: role(jetDiameter, 'd_t', 'Turbocharger restrictor') },
  out: openArea,
  equation: 'pi / 4 * (jets * jet^2 + restrictor^2)',
  source: ['derived', 'areas of circles'],
} as const satisfies About

export const openAreaOf = formula<typeof about>('open-area-of', {}, ({ jets, jet, restrictor }) => (Math.PI / 4) * (jets * jet * jet + restrictor * restrictor))
