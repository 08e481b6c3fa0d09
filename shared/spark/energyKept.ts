import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coilEnergy, energyShare } from './quantities.ts'

/** Energy that a coil still gets, as a share of what was wanted. */
export const about = {
  name: 'Share of the coil’s energy',
  in: { energy: coilEnergy, wanted: role(coilEnergy, 'E_w', 'Energy at the current wanted') },
  out: energyShare,
  equation: 'energy / wanted',
  source: ['definition', 'share of what was wanted'],
} as const satisfies About

export const energyKept = formula<typeof about>('energy-kept', {}, ({ energy, wanted }) => energy / wanted)
