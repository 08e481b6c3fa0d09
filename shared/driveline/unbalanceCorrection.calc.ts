import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { correctionMassFor } from './correctionMassFor.ts'
import { drillDepthFor } from './drillDepthFor.ts'
import { oppositeAngle } from './oppositeAngle.ts'
import { correctionMass, correctionRadius, drillDepth, drillDiameter, metalDensity, unbalance, unbalanceAngle } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 'unbalance-correction',
  title: 'Correcting an unbalance',
  theme: 'driveline',
  asks: 'How much has to come off, and how deep is that hole?',
  article: 'balance-and-matched-marks',
  cautions: ['rotating-burst', 'model-only'],
  in: { unbalance: free(unbalance, 80e-6), angle: free(unbalanceAngle, 0), radius: free(correctionRadius, mm(130)), diameter: free(drillDiameter, mm(8)), density: free(metalDensity, 7850) },
  out: { mass: correctionMass, depth: drillDepth, opposite: role(unbalanceAngle, 'θ_o', 'Angle to put mass on instead') },
  curve: ['unbalance', 'mass'],
  answer({ unbalance, angle, radius, diameter, density }) {
    const mass = correctionMassFor({ unbalance, radius })
    return { mass, depth: drillDepthFor({ mass, diameter, density }), opposite: oppositeAngle({ angle }) }
  },
  says: () => 'Take {mass} off at {angle} on a radius of {radius}: a hole of {diameter}, {depth} deep. Or put it on at {opposite}.',
  leavesOut: 'Whether the part may be drilled there at all: ask its maker. Also what a hole does to stress, and a second plane.',
})
