import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { contactCoefficient, jointHeat, joinedArea, endDifference, spacerConductivityOf, spacerThickness } from './quantities.ts'

/** Heat that passes a spacer: its own resistance between two bolted faces. */
export const about = {
  name: 'Heat through a spacer',
  in: { difference: role(endDifference, 'ΔT', 'Difference between the two sides'), thickness: spacerThickness, conductivity: spacerConductivityOf, area: joinedArea, contact: contactCoefficient },
  out: jointHeat,
  equation: 'area * difference / (thickness / conductivity + 2 / contact)',
  source: ['incropera', 'section 3.1.4, plane wall with contact resistances in series'],
} as const satisfies About

export const spacerHeat = formula<typeof about>('spacer-heat', {}, ({ difference, thickness, conductivity, area, contact }) => (area * difference) / (thickness / conductivity + 2 / contact))
