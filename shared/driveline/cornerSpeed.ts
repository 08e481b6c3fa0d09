import { standardGravity } from '../formula/constants.ts'
import { formula, type About } from '../formula/formula.ts'
import { cornerRadius, speedInGear, tyreGrip } from './quantities.ts'

/** Speed at which a corner takes all grip sideways. `√(μ g R)`, m/s. */
export const about = {
  name: 'Speed through a corner',
  in: { grip: tyreGrip, radius: cornerRadius },
  out: speedInGear,
  constants: { g: standardGravity },
  equation: 'sqrt(grip * g * radius)',
  source: ['gillespie-dynamics', 'chapter 6, steady cornering: lateral acceleration v²/R'],
  notes: 'Level road, no downforce, no bank.',
} as const satisfies About

export const cornerSpeed = formula<typeof about>('corner-speed', {}, ({ grip, radius }) => Math.sqrt(grip * standardGravity.value * radius))
