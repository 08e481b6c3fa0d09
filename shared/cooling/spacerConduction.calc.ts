import { calculation, free } from '../calculation/calculation.ts'
import { degC, mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { boltHeat } from './boltHeat.ts'
import { differenceBetween } from './differenceBetween.ts'
import { heatSum } from './heatSum.ts'
import { materialConductivity } from './materialConductivity.ts'
import { boltArea, contactCoefficient, joinedArea, jointHeat, spacerMaterial, spacerThickness, surfaceTemperatureOf } from './quantities.ts'
import { spacerHeat } from './spacerHeat.ts'

/** Heat that passes a spacer, and what goes around it by the bolts. */
export default calculation({
  id: 'spacer-conduction',
  title: 'Heat through a spacer and its bolts',
  theme: 'cooling',
  asks: 'How much heat does this spacer let through, and how much goes around it by the bolts?',
  article: 'heat-breaks-and-spacers',
  cautions: ['hot-metal', 'fuel-vapour', 'model-only'],
  in: {
    material: free(spacerMaterial, 'phenolic'), thickness: free(spacerThickness, mm(10)), area: free(joinedArea, 40e-4), contact: free(contactCoefficient, 3000),
    boltMaterial: free(spacerMaterial, 'steel', 'Material of the bolts'), boltArea: free(boltArea, 2e-4),
    hot: free(surfaceTemperatureOf, degC(100), 'Hot side'), cold: free(surfaceTemperatureOf, degC(45), 'Cold side'),
  },
  out: { through: role(jointHeat, 'Q_s', 'Heat through the spacer'), bolts: role(jointHeat, 'Q_b', 'Heat through the bolts'), heat: jointHeat },
  curve: ['thickness', 'heat'],
  answer({ material, thickness, area, contact, boltMaterial, boltArea, hot, cold }) {
    const difference = differenceBetween({ hot, cold })
    const through = spacerHeat({ difference, thickness, conductivity: materialConductivity({ material }), area, contact })
    const bolts = boltHeat({ difference, length: thickness, conductivity: materialConductivity({ material: boltMaterial }), area: boltArea })
    return { through, bolts, heat: heatSum({ one: through, other: bolts }) }
  },
  says: ({ through, bolts }) => bolts > through
    ? '{through} pass the spacer but {bolts} go around it by the bolts: insulating washers or stainless bolts would do more than a thicker spacer.'
    : '{through} pass the spacer and {bolts} the bolts, {heat} in all.',
  leavesOut: 'gas or fuel in the port, which carries heat past any spacer, and heating after a hot stop',
})
