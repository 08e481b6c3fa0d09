import { type Check } from '../check.ts'

const white = 'F. M. White, Fluid Mechanics, example 6.6: 200 ft of 6 in asphalted cast iron, water at 6 ft/s'
const flow = (example: string): string => `TP-410 (Flow of Fluids), example ${example}; printed answer quoted in the documentation of fluids`

export const checks: readonly Check[] = [
  { id: 'white-6-6-friction-colebrook', of: 'colebrook-friction', in: { reynolds: 270000, relativeRoughness: 0.0008 }, out: { out: { value: 0.02, unit: '1', tolerance: 0.0003 } }, source: white, confidence: 'confirmed by search' },
  { id: 'white-6-6-friction-churchill', of: 'churchill-friction', in: { reynolds: 270000, relativeRoughness: 0.0008 }, out: { out: { value: 0.02, unit: '1', tolerance: 0.0003 } }, source: white, confidence: 'confirmed by search' },
  {
    id: 'white-6-6-loss', of: 'friction-loss-of', in: { friction: 0.02, length: '200 ft', bore: '6 in', density: '62.4 lb/ft³', speed: '6 ft/s' },
    // 280 pounds-force per square foot.
    out: { out: { value: 280 / 144, unit: 'psi', tolerance: 4 / 144 } }, source: `${white}: 280 lbf/ft²`, confidence: 'confirmed by search',
  },
  {
    id: 'tp410-7-1-reynolds', of: 'line-loss-of',
    in: { flow: '200 l/min', bore: '52.48 mm', length: '20 m', fittings: 0, roughness: 0, density: 995.65, viscosity: 0.79735e-3 },
    out: { reynolds: { value: 100600, unit: '1', tolerance: 700 }, friction: { value: 0.0179, unit: '1', tolerance: 0.0003 } },
    source: flow('7-1: water at 30 °C, 200 l/min in smooth 50 mm pipe'), confidence: 'confirmed by search',
  },
  {
    id: 'tp410-7-13-loss', of: 'friction-loss-of', in: { friction: 0.023, length: '100 ft', bore: '2.067 in', density: 0.815 * 999.1, speed: 0.007570823568 / (Math.PI / 4 * 0.0525018 ** 2) },
    out: { out: { value: 66500, unit: 'Pa', tolerance: 150 } }, source: flow('7-13: fuel oil, 2 US gal/s through 100 ft of 2 in pipe, their friction factor 0.0230'), confidence: 'confirmed by search',
  },
  {
    id: 'tp410-7-13-line', of: 'line-loss-of',
    in: { flow: '120 US gal/min', bore: '2.067 in', length: '100 ft', fittings: 0, roughness: 0.0018 * 0.0254, density: 0.815 * 999.1, viscosity: 2.7e-6 * 0.815 * 999.1 },
    out: { loss: { value: 66500, unit: 'Pa', tolerance: 150 } }, source: flow('7-13: fuel oil, 2 US gal/s through 100 ft of 2 in pipe'), confidence: 'confirmed by search',
    differs: 'The book reads a friction factor of 0.0230 from a chart, the equation gives 0.0227: a loss 1 % lower',
  },
  {
    id: 'tp410-7-9-speed', of: 'line-speed-of', in: { flow: '400 US gal/min', bore: '5.047 in' }, out: { out: { value: 6.41, unit: 'ft/s', tolerance: 0.005 } },
    source: flow('7-9: 400 US gal/min in 5 in pipe, schedule 40'), confidence: 'computed by a reference library',
  },
  {
    id: 'tp410-7-9-laminar', of: 'laminar-friction', in: { reynolds: 1675.616699 }, out: { out: { value: 0.03819489, unit: '1', tolerance: 5e-9 } },
    source: flow('7-9: oil at a Reynolds number of 1,675.6'), confidence: 'computed by a reference library',
  },
  {
    id: 'tp410-7-23-orifice', of: 'orifice-flow', in: { coefficient: 0.625, diameter: '2 in', drop: 4.4 * 0.0254 * 9.80665 * (13595 - 999), density: '62.364 lb/ft³' },
    out: { out: { value: 106, unit: 'US gal/min', tolerance: 0.5 } }, source: flow('7-23: 4.4 in of mercury under water across a 2 in orifice, flow coefficient 0.625'), confidence: 'confirmed by search',
  },
  { id: 'widening-half', of: 'step-loss-coefficient', in: { diameters: 0.5 }, out: { out: { value: 0.5625, unit: '1', tolerance: 1e-9 } }, source: 'F. M. White, Fluid Mechanics, section 6.9: (1 - β²)², on the smaller bore', confidence: 'from memory' },
  { id: 'exit-into-tank', of: 'step-loss-coefficient', in: { diameters: 0 }, out: { out: { value: 1, unit: '1', tolerance: 1e-9 } }, source: 'F. M. White, Fluid Mechanics, section 6.9: exit of a pipe into a tank', confidence: 'from memory' },
]
