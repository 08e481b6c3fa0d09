import { type Check } from '../check.ts'

const bhandari = 'V. B. Bhandari, Design of Machine Elements'
const shigleyType = 'University solutions to Shigley’s Mechanical Engineering Design, equations 16-23 to 16-28: plate clutch 300 by 225 mm, friction 0.25, 5 kN'
const khurmi = 'R. S. Khurmi, J. K. Gupta, Theory of Machines'

/** Plate clutches and the heat of engaging one. */
export const checks: readonly Check[] = [
  {
    id: 'clutch-bhandari-11-1-torque', of: 'clutch-torque-two-sides',
    // One pair of faces: the other side's friction is nothing.
    in: { clamp: 15707.963, radius: '75 mm', plates: 1, flywheelSide: 0.2, coverSide: 0 },
    out: { out: { value: 235619.449e-3, unit: 'N m', tolerance: 1e-4 } },
    source: `${bhandari}, example 11.1, uniform wear`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-bhandari-11-1-radius', of: 'friction-radius-uniform-wear', in: { outer: '200 mm', inner: '100 mm' },
    out: { out: { value: 75, unit: 'mm', tolerance: 1e-9 } },
    source: `${bhandari}, example 11.1: 235 619.449 N mm over 0.2 times 15 707.963 N`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-bhandari-11-1-pressure', of: 'facing-pressure-uniform-wear', in: { clamp: 15707.963, outer: '200 mm', inner: '100 mm' },
    out: { out: { value: 1, unit: 'MPa', tolerance: 1e-6 } },
    source: `${bhandari}, example 11.1, uniform wear: 15 707.963 N at 1 N/mm²`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-bhandari-11-2-radius', of: 'friction-radius-uniform-pressure', in: { outer: '200 mm', inner: '100 mm' },
    out: { out: { value: 366519.143 / (0.2 * 23561.945), unit: 'mm', tolerance: 1e-5 } },
    source: `${bhandari}, example 11.2, uniform pressure: 366 519.143 N mm over 0.2 times 23 561.945 N`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-bhandari-11-2-pressure', of: 'facing-pressure-uniform-pressure', in: { clamp: 23561.945, outer: '200 mm', inner: '100 mm' },
    out: { out: { value: 1, unit: 'MPa', tolerance: 1e-6 } },
    source: `${bhandari}, example 11.2, uniform pressure`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-shigley-type-wear', of: 'clutch-torque',
    in: { clamp: 5000, outer: '300 mm', inner: '225 mm', plates: 1, flywheelSide: 0.25, coverSide: 0, left: 1 },
    out: {
      bedded: { value: 164.063, unit: 'N m', tolerance: 0.001 }, fresh: { value: 165.179, unit: 'N m', tolerance: 0.001 },
      pressure: { value: 188628, unit: 'Pa', tolerance: 1 }, even: { value: 161681, unit: 'Pa', tolerance: 1 },
    },
    source: shigleyType, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-khurmi-10-23', of: 'clutch-torque',
    in: { clamp: 3141.6, outer: '300 mm', inner: '200 mm', plates: 1, flywheelSide: 0.3, coverSide: 0.3, left: 1 },
    // 61.685 kW at 2 500 rpm.
    out: { bedded: { value: 61685 / (2500 * Math.PI / 30), unit: 'N m', tolerance: 0.004 }, pressure: { value: 0.1, unit: 'MPa', tolerance: 1e-5 } },
    source: `${khurmi}, example 10.23, page 303: two faces, 61.685 kW at 2 500 rpm`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-khurmi-10-34-time', of: 'launch-slip-time', in: { inertia: 13.5 * 0.15 ** 2, speed: '1000 rpm', torque: 7.8 },
    out: { out: { value: 4.1, unit: 's', tolerance: 0.05 } },
    source: `${khurmi}, example 10.34, page 316: 13.5 kg at 150 mm radius of gyration brought to 1 000 rpm by 7.8 N m`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-khurmi-10-34-heat', of: 'launch-heat', in: { torque: 7.8, speed: '1000 rpm', time: 4.1 },
    out: { out: { value: 1674, unit: 'J', tolerance: 1 } },
    source: `${khurmi}, example 10.34, page 316`, confidence: 'confirmed by search',
  },
  {
    id: 'brake-bhandari-12-14', of: 'clutch-temperature-rise',
    in: { heat: 0.5 * 100 * 0.35 ** 2 * (500 * Math.PI / 30) ** 2, share: 1, mass: 5, specificHeat: 460 },
    out: { out: { value: 7.300885, unit: 'K', tolerance: 1e-6 } },
    source: `${bhandari}, example 12.14, as recomputed by its companion (the printed answer is in error)`, confidence: 'confirmed by search',
  },
  {
    id: 'clutch-two-flywheels', of: 'matching-heat', in: { engine: 0.4, car: 0.6, before: 100, after: 50 },
    out: { out: { value: 300, unit: 'J', tolerance: 1e-9 } },
    source: 'Energy before, 0.2·100² + 0.3·50², less energy at the common speed 70 rad/s, 0.5·70²: 2 750 − 2 450 J', confidence: 'derived independently',
  },
]
