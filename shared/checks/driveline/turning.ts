import { type Check } from '../check.ts'

const bhandari = 'V. B. Bhandari, Design of Machine Elements'
const khurmi = 'R. S. Khurmi, J. K. Gupta, Theory of Machines'

/** Flywheels, equivalent mass and spinning discs. */
export const checks: readonly Check[] = [
  {
    id: 'flywheel-bhandari-12-1-inertia', of: 'ring-inertia', in: { density: 7200, thickness: 0.2, outer: 1, inner: 0 },
    out: { out: { value: 141.37167, unit: 'kg m²', tolerance: 1e-4 } },
    source: `${bhandari}, example 12.1, solid cast disc 1 m by 0.2 m`, confidence: 'confirmed by search',
  },
  {
    id: 'flywheel-bhandari-12-1-energy', of: 'turning-energy-of', in: { inertia: 141.37167, speed: '350 rpm' },
    out: { out: { value: 94956.722, unit: 'J', tolerance: 0.01 } },
    source: `${bhandari}, example 12.1`, confidence: 'confirmed by search',
  },
  {
    id: 'flywheel-bhandari-12-1-stop', of: 'rev-up-rate', in: { torque: 3454.3615, inertia: 141.37167 },
    out: { out: { value: 350 * Math.PI / 30 / 1.5, unit: 'rad/s²', tolerance: 1e-5 } },
    source: `${bhandari}, example 12.1: 3 454.36 N m stops it from 350 rpm in 1.5 s`, confidence: 'confirmed by search',
  },
  {
    id: 'flywheel-khurmi-16-2', of: 'rev-up-rate', in: { torque: 1500, inertia: 2500 },
    out: { out: { value: 0.6, unit: 'rad/s²', tolerance: 1e-9 } },
    source: `${khurmi}, example 16.2, page 573`, confidence: 'confirmed by search',
  },
  {
    id: 'flywheel-khurmi-16-2-energy', of: 'turning-energy-of', in: { inertia: 2500, speed: '6 rad/s' },
    out: { out: { value: 45, unit: 'kJ', tolerance: 1e-9 } },
    source: `${khurmi}, example 16.2, page 573: from rest for 10 s at 0.6 rad/s²`, confidence: 'confirmed by search',
  },
  {
    id: 'equivalent-mass-bhandari-12-2', of: 'equivalent-mass-in', in: { mass: 1000, wheels: 2, radius: 0.35, engine: 2.5, ratio: 5, finalDrive: 1 },
    out: { out: { value: 1526.5306, unit: 'kg', tolerance: 1e-4 } },
    source: `${bhandari}, example 12.2: energy 588 939.28 J at 100 km/h, turned into a mass`, confidence: 'confirmed by search',
  },
  {
    id: 'mass-factor-bhandari-12-2', of: 'mass-factor-of', in: { equivalent: 2 * 588939.28 / (100 / 3.6) ** 2, mass: 1000 },
    out: { out: { value: 1.5265306, unit: '1', tolerance: 1e-6 } },
    source: `${bhandari}, example 12.2`, confidence: 'confirmed by search',
  },
  {
    id: 'disc-small-hole-doubles', of: 'disc-stress-at-hole', in: { density: 7850, speed: '14000 rpm', poisson: 0.3, outer: 0.125, hole: 0 },
    // Solid disc, centre: (3 + ν) / 8 ρ ω² R²; a pin-hole doubles it.
    out: { out: { value: 217.5, unit: 'MPa', tolerance: 0.1 } },
    source: 'S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, article 32: a small hole doubles the stress of a solid disc, here (3 + 0.3)/8 · 7 850 · 1 466.08² · 0.125² = 108.75 MPa',
    confidence: 'derived independently',
  },
  {
    id: 'disc-thin-ring', of: 'disc-stress-at-hole', in: { density: 7850, speed: 500, poisson: 0.3, outer: 0.2, hole: 0.2 },
    out: { out: { value: 78.5, unit: 'MPa', tolerance: 1e-6 } },
    source: 'Thin spinning ring, stress density times rim speed squared: 7 850 · 100² Pa', confidence: 'derived independently',
  },
  {
    id: 'disc-radial-largest', of: 'disc-radial-stress', in: { density: 7850, speed: 500, poisson: 0.3, outer: 0.16, hole: 0.04, radius: 0.08 },
    out: { out: { value: 3.3 / 8 * 7850 * 500 ** 2 * 0.12 ** 2 / 1e6, unit: 'MPa', tolerance: 1e-9 } },
    source: 'S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, article 32: the radial stress is largest at √(R r0), (3 + ν)/8 ρ ω² (R − r0)²', confidence: 'from memory',
  },
  {
    id: 'hole-one-pull', of: 'bolt-hole-stress', in: { hoop: 100e6, radial: 0 },
    out: { out: { value: 300, unit: 'MPa', tolerance: 1e-9 } },
    source: 'S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, article 35: three times the pull', confidence: 'from memory',
  },
  {
    id: 'hole-even-pull', of: 'bolt-hole-stress', in: { hoop: 100e6, radial: 100e6 },
    out: { out: { value: 200, unit: 'MPa', tolerance: 1e-9 } },
    source: 'S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, article 35: twice an all-round pull', confidence: 'from memory',
  },
  {
    id: 'road-speed-km', of: 'speed-in-gear-at', in: { speed: '6000 rpm', ratio: 1, finalDrive: 4, radius: 1 / (2 * Math.PI) },
    out: { out: { value: 90, unit: 'km/h', tolerance: 1e-9 } },
    source: 'A wheel of one metre round at a quarter of 6 000 turns a minute: 1 500 m a minute', confidence: 'derived independently',
  },
  {
    id: 'tyre-limit-flat', of: 'tyre-limit', in: { grip: 1, axleMass: 700, radius: 0.3, height: 0, wheelbase: 2.5 },
    out: { out: { value: 2059.3965, unit: 'N m', tolerance: 1e-3 } },
    source: '700 kg under standard gravity at 0.3 m, no height: 700 · 9.80665 · 0.3', confidence: 'derived independently',
  },
]
