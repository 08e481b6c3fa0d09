import { kinds } from './kinds.ts'
import { isQuantity, type Shape } from './quantity.ts'

const named: Readonly<Record<string, string>> = { '-1,1,-2,0,0,0': 'Pa', '1,1,-2,0,0,0': 'N', '2,1,-2,0,0,0': 'J', '2,1,-3,0,0,0': 'W', '2,1,-3,0,-1,0': 'V', '2,1,-3,0,-2,0': 'Ω', '2,1,-2,0,-2,0': 'H' }
const base = ['m', 'kg', 's', 'K', 'A', 'mol']

/** SI unit in which a value crosses every inner border: `kg/s` reads `kg s⁻¹` as `kg s^-1`. Shaft speed is in rad/s, shares are fractions. */
export function siUnit(shape: Shape): string {
  if (shape.kind === 'curve') return `${siUnit(shape.y)} over ${siUnit(shape.x)}`
  if (!isQuantity(shape)) return ''
  if (shape.kind === 'shaftSpeed') return 'rad/s'
  if (shape.kind === 'angle') return 'rad'
  if (shape.kind === 'torque') return 'N m'
  const { dim } = kinds[shape.kind]
  const name = named[dim.join(',')]
  if (name) return name
  const parts = dim.map((n, i) => (n === 0 ? '' : n === 1 ? base[i]! : `${base[i]!}^${n}`)).filter(Boolean)
  return parts.length === 0 ? '1' : parts.join(' ')
}
