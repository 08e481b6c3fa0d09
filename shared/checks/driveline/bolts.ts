import { type Check } from '../check.ts'

const areas: readonly (readonly [string, string, number, number])[] = [
  ['M6', '1 mm', 20.1, 0.05], ['M8', '1.25 mm', 36.6, 0.05], ['M10', '1.5 mm', 58, 0.05], ['M12', '1.75 mm', 84.3, 0.05], ['M14', '2 mm', 115, 0.5], ['M16', '2 mm', 157, 0.5], ['M20', '2.5 mm', 245, 0.5],
]

/** Bolts: torque and preload, standard areas, stacks of two metals. */
export const checks: readonly Check[] = [
  {
    id: 'bolt-shigley-8-3-torque', of: 'preload-from-torque', in: { torque: '3750 lbf in', factor: 0.2, diameter: '0.75 in' },
    out: { out: { value: 25000, unit: 'lbf', tolerance: 1 } },
    source: 'R. G. Budynas, J. K. Nisbett, Shigley’s Mechanical Engineering Design, 9th edition, example 8-3: 25 kip from 3 750 lbf in at K = 0.2', confidence: 'confirmed by search',
  },
  {
    id: 'bolt-shigley-8-3-thread', of: 'torque-for-preload',
    // Mean diameter of 3/4-16 UNF as the book takes it, (d + d_r) / 2; collar diameter 1.25 d.
    in: { preload: '25000 lbf', pitch: '0.0625 in', pitchDiameter: '0.7094 in', thread: 0.15, headDiameter: '0.9375 in', head: 0.15 },
    out: { out: { value: 3551, unit: 'lbf in', tolerance: 1 } },
    source: 'R. G. Budynas, J. K. Nisbett, Shigley’s Mechanical Engineering Design, example 8-3: torque by lead angle and friction, equation 8-26', confidence: 'from memory',
  },
  {
    id: 'bolt-vdi-m10', of: 'torque-for-preload', in: { preload: 30000, pitch: '1.5 mm', pitchDiameter: '9.026 mm', thread: 0.12, headDiameter: '12.8 mm', head: 0.12 },
    out: { out: { value: 49.0863, unit: 'N m', tolerance: 1e-4 } },
    source: 'VDI 2230-1, M_A = F_M (0.16 P + 0.58 d2 μ_G + D_Km μ_K / 2), evaluated separately', confidence: 'derived independently',
  },
  ...areas.map(([name, pitch, value, tolerance]): Check => ({
    id: `bolt-area-${name.toLowerCase()}`, of: 'thread-stress-area', in: { diameter: `${name.slice(1)} mm`, pitch },
    out: { out: { value, unit: 'mm²', tolerance } },
    source: `ISO 898-1:2013, nominal stress area of ${name}`, confidence: 'confirmed by search',
  })),
  {
    id: 'bolt-proof-m10-8.8', of: 'share-of-proof', in: { preload: 33700, proof: 580e6, area: '58 mm²' },
    out: { out: { value: 1, unit: '1', tolerance: 0.0025 } },
    source: 'ISO 898-1:2013, proof load of M10 class 8.8: 33 700 N, printed to three figures', confidence: 'from memory',
  },
  {
    id: 'bolt-proof-m12-10.9', of: 'share-of-proof', in: { preload: 70000, proof: 830e6, area: '84.3 mm²' },
    out: { out: { value: 1, unit: '1', tolerance: 0.0025 } },
    source: 'ISO 898-1:2013, proof load of M12 class 10.9: 70 000 N, printed to three figures', confidence: 'from memory',
  },
  {
    id: 'growth-aluminium-on-iron', of: 'growth-over-bolt', in: { aluminium: '150 mm', iron: 0, ofAluminium: 23.9e-6, ofIron: 10.6e-6, ofBolt: 10.6e-6, warming: 80 },
    out: { out: { value: 0.1596, unit: 'mm', tolerance: 1e-6 } },
    source: 'Expansion coefficients of Shigley’s Mechanical Engineering Design, table 3-3: 0.2868 mm less 0.1272 mm over 150 mm and 80 K', confidence: 'from memory',
  },
  {
    id: 'bolt-stiffness-rod', of: 'rod-stiffness', in: { modulus: 200e9, area: '100 mm²', length: '100 mm' },
    out: { out: { value: 200, unit: 'kN/mm', tolerance: 1e-9 } },
    source: 'E A / l in round numbers', confidence: 'derived independently',
  },
]
