import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { annulusLeakage } from './annulusLeakage.ts'
import { dropToSump } from './dropToSump.ts'
import { mainClearance, mainDiameter, mainLength, rotorClearance, rotorHole, rotorLength } from './fields.ts'
import { grooveLeakage } from './grooveLeakage.ts'
import { holeLeakage } from './holeLeakage.ts'
import { landOf } from './landOf.ts'
import { leakageFlow } from './leakageFlow.ts'
import { at } from './point.ts'
import { eccentricityRatio, oilFlow } from './quantities.ts'
import { radialFromDiametral } from './radialFromDiametral.ts'

export default calculation({
  id: 'oil-leakage', title: 'Oil through the clearances', theme: 'oil',
  asks: 'How much oil do the bearings pass at this clearance?',
  article: 'flow-and-pressure', cautions: ['hot-oil', 'model-only'],
  in: {
    pressure: at.gaugePressure, viscosity: at.viscosity, eccentricity: free(eccentricityRatio, 0.6, 'How far the main journal runs out of the middle'),
    mainDiameter, mainLength, mainDiametral: mainClearance, rotorLength, rotorDiametral: rotorClearance, hole: rotorHole,
  },
  out: { grooved: role(oilFlow, 'Q_g', 'Flow, groove-fed'), plain: role(oilFlow, 'Q_a', 'Flow, fed from one end'), holed: role(oilFlow, 'Q_h', 'Flow, hole-fed') },
  curve: ['mainDiametral', 'grooved'],
  answer({ pressure, viscosity, eccentricity, mainDiameter: diameter, mainLength: length, mainDiametral, rotorLength, rotorDiametral, hole }) {
    const drop = dropToSump({ pressure })
    const clearance = radialFromDiametral({ diametral: mainDiametral })
    const flow = (factor: number): number => leakageFlow({ factor, drop, viscosity })
    return {
      grooved: flow(grooveLeakage({ diameter, clearance, land: landOf({ length }), eccentricity })),
      plain: flow(annulusLeakage({ diameter, clearance, length, eccentricity })),
      holed: flow(holeLeakage({ clearance: radialFromDiametral({ diametral: rotorDiametral }), hole, length: rotorLength })),
    }
  },
  says: () => 'At {pressure} a main bearing with a groove all round passes {grooved}, fed from one end it would pass {plain}; a rotor bearing fed by one hole passes {holed}. Flow grows with the cube of the clearance.',
  leavesOut: 'Oil that the turning journal draws by itself, grooves of other shapes, wear at the edges.',
})
