import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { plateAngle, throttlePosition } from './quantities.ts'

/** Angle of a throttle plate at a share of its travel. */
export const about = {
  name: 'Plate angle at a throttle position',
  in: { position: throttlePosition, closed: role(plateAngle, 'ψ_0', 'Angle of the shut plate') },
  out: plateAngle,
  equation: 'closed + position * (pi / 2 - closed)',
  source: ['definition', 'position counted from shut to fully open'],
} as const satisfies About

export const plateAngleAt = formula<typeof about>('plate-angle-at', {}, ({ position, closed }) => closed + position * (Math.PI / 2 - closed))
