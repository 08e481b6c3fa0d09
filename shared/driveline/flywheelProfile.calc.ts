import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { profileRingInertia } from './profileRingInertia.ts'
import { profileRingMass } from './profileRingMass.ts'
import { discRadius, inertia, metalDensity, profileThickness, ringMass } from './quantities.ts'
import { threeInertias } from './threeInertias.ts'
import { threeMasses } from './threeMasses.ts'

export default calculation({
  id: 'flywheel-profile',
  title: 'Inertia of a flywheel from its profile',
  theme: 'driveline',
  asks: 'What does a flywheel of this profile weigh, and what inertia has it?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    r1: free(discRadius, mm(20), 'Radius of the bore'), r2: free(discRadius, mm(60), 'Radius where the web begins'), r3: free(discRadius, mm(110), 'Radius where the rim begins'), r4: free(discRadius, mm(145), 'Radius of the rim'),
    t1: free(profileThickness, mm(25), 'Thickness at the bore'), t2: free(profileThickness, mm(12), 'Thickness where the web begins'), t3: free(profileThickness, mm(10), 'Thickness where the rim begins'), t4: free(profileThickness, mm(22), 'Thickness at the rim'),
    density: free(metalDensity, 7850),
  },
  out: { mass: ringMass, inertia },
  curve: ['t4', 'inertia'],
  answer({ r1, r2, r3, r4, t1, t2, t3, t4, density }) {
    if (!(r1 < r2 && r2 < r3 && r3 < r4)) throw new NoAnswer('flywheel', 'The four radii have to rise from bore to rim.')
    const hub = { inner: r1, outer: r2, innerThickness: t1, outerThickness: t2, density }
    const web = { inner: r2, outer: r3, innerThickness: t2, outerThickness: t3, density }
    const rim = { inner: r3, outer: r4, innerThickness: t3, outerThickness: t4, density }
    return {
      mass: threeMasses({ first: profileRingMass(hub), second: profileRingMass(web), third: profileRingMass(rim) }),
      inertia: threeInertias({ first: profileRingInertia(hub), second: profileRingInertia(web), third: profileRingInertia(rim) }),
    }
  },
  says: () => 'This profile weighs {mass} and has an inertia of {inertia}. A millimetre at the rim counts for more than one at the hub.',
  leavesOut: 'Holes, teeth of a ring gear, bolts and a friction surface of another metal.',
})
