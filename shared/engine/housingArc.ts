import { formula, type About } from '../formula/formula.ts'
import { arcBetween } from './arcQuadrature.ts'
import { arcLength, eccentricity, generatingRadius, shaftAngle } from './quantities.ts'

/** Length of the trochoid between the two apexes that bound a chamber, before any shift. */
export const about = {
  name: 'Housing arc of a chamber',
  in: { generatingRadius, eccentricity, shaftAngle },
  out: arcLength,
  steps: [
    'An apex at rotor angle α moves along the trochoid by sqrt(R² + 9e² + 6eR cos 2α) dα.',
    'The chamber reaches from α = π/2 + θ/3 - π/3 to π/2 + θ/3 + π/3: at θ = 0 it lies over the waist of the housing.',
    'Integrate by Gauss and Legendre, sixteen points on each half.',
  ],
  source: ['derived', 'arc length of the epitrochoid x = e cos 3α + R cos α, y = e sin 3α + R sin α'],
  notes: 'An elliptic integral: there is no closed form.',
} as const satisfies About

const third = Math.PI / 3

export const housingArc = formula<typeof about>('housing-arc', {}, ({ generatingRadius: R, eccentricity: e, shaftAngle: turned }) => {
  const constant = R * R + 9 * e * e
  const swing = 6 * e * R
  const speed = (angle: number): number => Math.sqrt(constant + swing * Math.cos(2 * angle))
  const middle = Math.PI / 2 + turned / 3
  return arcBetween(speed, middle - third, middle) + arcBetween(speed, middle, middle + third)
})
