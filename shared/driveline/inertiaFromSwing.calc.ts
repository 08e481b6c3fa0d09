import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { balancedMass, hangRadius, inertia, swingCount, swingTime, wireLength } from './quantities.ts'
import { inertiaFromSwing } from './inertiaFromSwing.ts'
import { timeOfOneSwing } from './timeOfOneSwing.ts'

export default calculation({
  id: 'inertia-from-swing',
  title: 'Inertia measured on three wires',
  theme: 'driveline',
  asks: 'What inertia has a part that swings on wires in this time?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['lifting', 'model-only'],
  in: {
    mass: free(balancedMass, 8.3, 'Mass of the part'), radius: free(hangRadius, mm(120)), length: free(wireLength, 1.5),
    whole: free(role(swingTime, 't', 'Time of all swings'), 42.5, 'Time of all swings'), swings: free(swingCount, 20),
  },
  out: { inertia: role(inertia, 'J', 'Inertia of the part'), time: swingTime },
  curve: ['whole', 'inertia'],
  answer({ mass, radius, length, whole, swings }) {
    const time = timeOfOneSwing({ whole, swings })
    return { time, inertia: inertiaFromSwing({ mass, radius, time, length }) }
  },
  says: () => 'One swing takes {time}, so the part has {inertia}. Time twenty swings: the error of a thumb on a stopwatch is then a twentieth.',
  leavesOut: 'Air, the wires’ own twist, and swings of more than a few degrees.',
})
