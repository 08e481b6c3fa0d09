import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { metalDensity, inertia, ringInnerDiameter, ringMass, ringOuterDiameter, ringThickness, turningEnergy } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { inertiaSum } from './inertiaSum.ts'
import { massSum } from './massSum.ts'
import { ringInertia } from './ringInertia.ts'
import { ringMassOf } from './ringMassOf.ts'
import { turningEnergyOf } from './turningEnergyOf.ts'
import { at as engine } from '../engine/point.ts'

export default calculation({
  id: 'flywheel-inertia',
  title: 'Inertia of a flywheel from its rings',
  theme: 'driveline',
  asks: 'What inertia and mass does this flywheel have?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['rotating-burst', 'lifting', 'model-only'],
  in: {
    density: free(metalDensity, 7850), speed: engine.speed,
    rimOuter: free(ringOuterDiameter, mm(280), 'Rim, outer diameter'), rimInner: free(ringInnerDiameter, mm(240), 'Rim, inner diameter'), rimThickness: free(ringThickness, mm(25), 'Rim, thickness'),
    webOuter: free(ringOuterDiameter, mm(240), 'Web, outer diameter'), webInner: free(ringInnerDiameter, mm(120), 'Web, inner diameter'), webThickness: free(ringThickness, mm(14), 'Web, thickness'),
    hubOuter: free(ringOuterDiameter, mm(120), 'Hub, outer diameter'), hubInner: free(ringInnerDiameter, mm(60), 'Hub, inner diameter'), hubThickness: free(ringThickness, mm(20), 'Hub, thickness'),
  },
  out: { inertia: role(inertia, 'J', 'Inertia of the flywheel'), mass: role(ringMass, 'm', 'Mass of the flywheel'), energy: turningEnergy },
  curve: ['rimThickness', 'inertia'],
  answer(x) {
    const rim = { density: x.density, thickness: x.rimThickness, outer: x.rimOuter, inner: x.rimInner }
    const web = { density: x.density, thickness: x.webThickness, outer: x.webOuter, inner: x.webInner }
    const hub = { density: x.density, thickness: x.hubThickness, outer: x.hubOuter, inner: x.hubInner }
    const whole = inertiaSum({ shaft: ringInertia(rim), flywheel: ringInertia(web), clutch: ringInertia(hub) })
    return { inertia: whole, mass: massSum({ rim: ringMassOf(rim), web: ringMassOf(web), hub: ringMassOf(hub) }), energy: turningEnergyOf({ inertia: whole, speed: x.speed }) }
  },
  says: () => 'It weighs {mass} and has {inertia}; at {speed} it stores {energy}, all of which comes out if it bursts.',
  leavesOut: 'Bolt holes, dowels, the ring gear’s teeth, and everything that is not a flat ring. Weigh the part: the mass must agree.',
})
