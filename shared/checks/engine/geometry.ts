import { type Check } from '../check.ts'

const polygon = 'Chamber areas integrated over drawn polygons of trochoid, envelope and their parallels, without these formulas'
const base = { generatingRadius: '105 mm', eccentricity: '15 mm', width: '80 mm' }
const shifted = { ...base, shift: '3 mm' }
const cm3 = (value: number, tolerance = 5e-4) => ({ out: { value, unit: 'cm³', tolerance } })

export const checks: readonly Check[] = [
  { id: 'chamber-published', of: 'chamber-displacement', in: { ...base, shift: 0 }, out: cm3(654.7, 0.06),
    source: 'K. Yamamoto, Rotary Engine: 3 √3 e R b; dimensions and result reproduced in the press', confidence: 'confirmed by search' },
  { id: 'engine-published', of: 'quoted-displacements', in: { displacement: '654.715 cm³', rotors: 2 }, out: { oneTurn: { value: 1309, unit: 'cm³', tolerance: 0.6 } },
    source: 'K. Yamamoto, Rotary Engine: 3 √3 e R b for two rotors; result reproduced in the press', confidence: 'confirmed by search' },
  { id: 'chamber-bensinger', of: 'short-displacement', in: { generatingRadius: '100 mm', eccentricity: '14 mm', width: '67 mm', shift: '2 mm' }, out: cm3(497.5, 0.6),
    source: 'W.-D. Bensinger, Rotationskolben-Verbrennungsmotoren (1973), pages 64–65: 3 √3 B (R + a) e, an often quoted example', confidence: 'from memory' },
  { id: 'chamber-bensinger-exact', of: 'chamber-displacement', in: { generatingRadius: '100 mm', eccentricity: '14 mm', width: '67 mm', shift: '2 mm' }, out: cm3(496.924), source: polygon, confidence: 'derived independently' },
  { id: 'chamber-shifted', of: 'chamber-displacement', in: shifted, out: cm3(672.9755, 1e-3), source: polygon, confidence: 'derived independently' },
  { id: 'chamber-shifted-short', of: 'short-displacement', in: shifted, out: cm3(673.4214, 1e-3), source: 'W.-D. Bensinger (1973), pages 64–65: 3 √3 e (R + a) b', confidence: 'confirmed by search' },
  { id: 'minimum-volume', of: 'theoretical-minimum-volume', in: { ...base, shift: 0 }, out: cm3(37.8761, 1e-4), source: polygon, confidence: 'derived independently' },
  { id: 'minimum-volume-shifted', of: 'theoretical-minimum-volume', in: shifted, out: cm3(38.81), source: polygon, confidence: 'derived independently' },
  { id: 'theoretical-ratio', of: 'theoretical-compression-ratio', in: { displacement: '654.71521 cm³', minimumVolume: '37.8761 cm³' }, out: { out: { value: 18.28571, unit: '1', tolerance: 1e-4 } }, source: polygon, confidence: 'derived independently' },
  { id: 'theoretical-ratio-shifted', of: 'theoretical-compression-ratio', in: { displacement: '672.9755 cm³', minimumVolume: '38.81 cm³' }, out: { out: { value: 18.34028, unit: '1', tolerance: 1e-4 } }, source: polygon, confidence: 'derived independently' },
  ...([[0, 37.8761], [30, 57.6182], [60, 114.4632], [90, 201.5549], [120, 308.3887], [150, 422.0788], [180, 528.9125], [210, 616.0042], [240, 672.8492], [270, 692.5913]] as const).map(([angle, volume]): Check => ({
    id: `chamber-volume-${angle}`, of: 'chamber-volume', in: { ...base, shift: 0, shaftAngle: `${angle}°` }, out: cm3(volume), source: polygon, confidence: 'derived independently',
  })),
  ...([[0, 38.81], [30, 58.9988], [60, 117.1594], [90, 206.3578], [120, 315.9466], [150, 432.8032], [180, 542.8456], [210, 632.6991], [240, 691.3952], [270, 711.7854]] as const).map(([angle, volume]): Check => ({
    id: `chamber-volume-shifted-${angle}`, of: 'chamber-volume', in: { ...shifted, shaftAngle: `${angle}°` }, out: cm3(volume), source: polygon, confidence: 'derived independently',
  })),
  { id: 'housing-arc-smallest', of: 'housing-arc', in: { generatingRadius: '105 mm', eccentricity: '15 mm', shaftAngle: 0 }, out: { out: { value: 194.02218, unit: 'mm', tolerance: 1e-4 } }, source: 'Elliptic arc length by scipy', confidence: 'computed by a reference library' },
  { id: 'housing-arc-largest', of: 'housing-arc', in: { generatingRadius: '105 mm', eccentricity: '15 mm', shaftAngle: '270°' }, out: { out: { value: 270.10665, unit: 'mm', tolerance: 1e-4 } }, source: 'Elliptic arc length by scipy', confidence: 'computed by a reference library' },
  { id: 'flank-arc', of: 'flank-arc', in: { generatingRadius: '105 mm', eccentricity: '15 mm' }, out: { out: { value: 190.13113, unit: 'mm', tolerance: 1e-4 } }, source: polygon, confidence: 'derived independently' },
  { id: 'flank-gap', of: 'flank-gap-volume', in: { gap: '0.2 mm', flank: '190.13113 mm', width: '80 mm' }, out: cm3(3.0421, 0.01), source: 'Flank length by numpy times gap and width, second order left out', confidence: 'derived independently' },
  ...([[5.5, 33.0557], [6, 30], [6.5, 27.4864], [7, 25.3769], [7.5, 23.5782], [8, 22.0243], [8.5, 20.6673], [9, 19.4712], [10, 17.4576]] as const).map(([ratio, angle]): Check => ({
    id: `leaning-${ratio}`, of: 'leaning-angle', in: { generatingRadius: ratio * 0.015, eccentricity: '15 mm' }, out: { out: { value: angle, unit: '°', tolerance: 1e-3 } },
    source: 'sin φ = 3e/R, K. Yamamoto, Rotary Engine, basic geometry; values recomputed', confidence: 'derived independently',
  })),
  { id: 'leaning-published', of: 'leaning-angle', in: { generatingRadius: '105 mm', eccentricity: '15 mm' }, out: { out: { value: 25.376934, unit: '°', tolerance: 1e-5 } }, source: polygon, confidence: 'derived independently' },
  { id: 'four-stroke-equivalent', of: 'quoted-displacements', in: { displacement: '654.715 cm³', rotors: 2 },
    out: { twoTurns: { value: 2618.86, unit: 'cm³', tolerance: 0.02 }, threeTurns: { value: 3928.29, unit: 'cm³', tolerance: 0.02 } },
    source: 'Twice the chambers for comparison with a four-stroke: the usual convention, in an automotive dictionary; three times by count of chambers', confidence: 'confirmed by search' },
  { id: 'rotor-speed', of: 'rotor-speed', in: { speed: '9000 rpm' }, out: { out: { value: 3000, unit: 'rpm', tolerance: 1e-9 } }, source: 'Gears of 3e and 2e, K. Yamamoto, Rotary Engine; J. Norbye, The Wankel Engine', confidence: 'from memory' },
]
