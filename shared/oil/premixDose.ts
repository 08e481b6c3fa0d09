import { shaftSpeed } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { premixOilFlow } from '../fuel/quantities.ts'
import { sealDose } from './quantities.ts'

/** Mass of oil that comes with the fuel in one shaft turn. */
export const about = {
  name: 'Dose by premix',
  in: { oil: premixOilFlow, speed: shaftSpeed },
  out: sealDose,
  equation: 'oil * 2 * pi / speed',
  source: ['definition', 'mass flow over turns in the same time'],
  notes: 'All of it is taken to reach the seals. While the fuel is cut there is none.',
} as const satisfies About

export const premixDose = formula<typeof about>('premix-dose', {}, ({ oil, speed }) => (oil * 2 * Math.PI) / speed)
