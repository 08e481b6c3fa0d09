import { formula, type About } from '../formula/formula.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'
import { shaftSpeed, veCurve, volumetricEfficiency } from './quantities.ts'

/** Volumetric efficiency read off its curve. */
export const about = {
  name: 'Volumetric efficiency at a speed',
  in: { curve: veCurve, speed: shaftSpeed },
  out: volumetricEfficiency,
  steps: ['Read the curve by monotone cubics between its points; below the first and above the last point it stays level.'],
  source: ['fritsch-butland', 'monotone slopes'],
} as const satisfies About

export const veAtSpeed = formula<typeof about>('ve-at-speed', {}, ({ curve: { x, y }, speed }) => hermiteAt(x, y, monotoneSlopes(x, y), Math.min(Math.max(speed, x[0]!), x[x.length - 1]!)))
