import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineRotors, engineShift, engineWidth } from './fields.ts'
import { displacement, quotedDisplacement } from './quantities.ts'
import { quotedDisplacements } from './quotedDisplacements.ts'

export default calculation({
  id: 'displacement-conventions', title: 'Displacement, three ways', theme: 'engine', article: 'what-displacement-means-here', cautions: ['model-only'],
  asks: 'What is the displacement of this engine by each of the three ways in which it is quoted?',
  in: {
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, stated: engineDisplacement,
    rotors: engineRotors,
  },
  out: { chamber: displacement, oneTurn: role(quotedDisplacement, 'V_1', 'One chamber per rotor'), twoTurns: role(quotedDisplacement, 'V_2', 'Two shaft turns'), threeTurns: role(quotedDisplacement, 'V_3', 'All chambers, three shaft turns') },
  curve: ['width', 'oneTurn'],
  answer({ rotors, ...description }) {
    const chamber = describedDisplacement(description)
    return { chamber, ...quotedDisplacements({ displacement: chamber, rotors }) }
  },
  says: () => 'One turn of the shaft takes in {oneTurn}. A four-stroke piston engine that takes in as much at the same speed would be called {twoTurns}; all chambers together sweep {threeTurns} in three turns. Ask which one a figure means before you divide by it.',
  leavesOut: 'Nothing of the geometry; a rule book may count differently.',
})
