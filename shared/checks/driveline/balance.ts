import { type Check } from '../check.ts'

const grades = { 'G0.4': [3.82, 1.273, 0.637, 0.424], 'G1': [9.549, 3.183, 1.592, 1.061], 'G2.5': [23.873, 7.958, 3.979, 2.653], 'G6.3': [60.161, 20.054, 10.027, 6.685], 'G16': [152.789, 50.93, 25.465, 16.977] } as const
const speeds = [1000, 3000, 6000, 9000] as const
const khurmi = 'R. S. Khurmi, J. K. Gupta, Theory of Machines, example 21.1, masses of 200, 300, 240 and 260 kg at 0.2, 0.15, 0.25 and 0.3 m'
const fourMasses = { u1: 40, a1: 0, u2: 45, a2: '45 deg', u3: 60, a3: '120 deg', u4: 78, a4: '255 deg' }

/** Permissible offset by grade and speed, and unbalances added as vectors. */
export const checks: readonly Check[] = [
  ...(Object.keys(grades) as (keyof typeof grades)[]).flatMap((grade) => speeds.map((speed, i): Check => ({
    id: `balance-${grade.toLowerCase()}-${speed}`, of: 'permissible-unbalance',
    in: { grade, mass: 1, speed: `${speed} rpm`, far: 1, span: 1 },
    out: { unbalance: { value: grades[grade][i]!, unit: 'g mm', tolerance: 1e-3 } },
    source: 'ISO 21940-11:2016, definition of the balance quality grade, G = e_per ω: per kilogram, computed from the definition', confidence: 'derived independently',
  }))),
  {
    id: 'balance-diagram-g6.3-3000', of: 'permissible-offset-at', in: { grade: 6.3e-3, speed: '3000 rpm' },
    out: { out: { value: 20, unit: 'µm', tolerance: 0.5 } },
    source: 'ISO 21940-11:2016, diagram of permissible residual specific unbalance: G 6.3 at 3 000 r/min reads 20 g mm/kg', confidence: 'from memory',
  },
  {
    id: 'balance-iso-turbine', of: 'permissible-unbalance', in: { grade: 'G2.5', mass: 3600, speed: '3000 rpm', far: 0.9, span: 2.4 },
    out: { unbalance: { value: 28.6e3, unit: 'g mm', tolerance: 100 }, nearPlane: { value: 10.7e3, unit: 'g mm', tolerance: 100 } },
    source: 'ISO 21940-11:2016, example of allocation: turbine rotor of 3 600 kg at 3 000 r/min, grade G 2.5, planes 1.5 and 0.9 m from the centre of mass', confidence: 'from memory',
  },
  {
    id: 'balance-khurmi-21-1-amount', of: 'unbalance-sum-of', in: fourMasses,
    out: { amount: { value: 23.2, unit: 'kg m', tolerance: 0.05 } },
    source: `${khurmi}: resultant 23.2 kg m`, confidence: 'from memory',
  },
  {
    id: 'balance-khurmi-21-1-angle', of: 'unbalance-sum-of', in: fourMasses,
    out: { angle: { value: 21.48, unit: '°', tolerance: 0.005 } },
    source: `${khurmi}: balancing mass at 201.48°, opposite the resultant`, confidence: 'from memory',
    differs: 'The book rounds each component to 0.1 kg m before it takes the angle; unrounded components give 21.31°.',
  },
  {
    id: 'balance-right-angle', of: 'unbalance-sum-of', in: { u1: 3e-6, a1: 0, u2: 4e-6, a2: '90 deg', u3: 0, a3: 0, u4: 0, a4: 0 },
    out: { amount: { value: 5, unit: 'g mm', tolerance: 1e-9 }, angle: { value: 53.1301, unit: '°', tolerance: 1e-4 } },
    source: 'Three and four at a right angle make five', confidence: 'derived independently',
  },
]
