/**
 * A kind is a named dimension: what can be added to what. Temperature and temperature difference are two kinds,
 * and so are absolute, gauge and difference of pressure, because adding one where another belongs is the classic slip.
 * `dim` is [m, kg, s, K, A, mol]; `show` is the unit a metric and an imperial reader sees first.
 */
export type Dim = readonly [number, number, number, number, number, number]

const d = (m = 0, kg = 0, s = 0, K = 0, A = 0, mol = 0): Dim => [m, kg, s, K, A, mol]
const kind = (says: string, dim: Dim, metric: string, imperial = metric) => ({ says, dim, metric, imperial })

export const kinds = {
  number: kind('a plain number', d(), '1'),
  share: kind('a share', d(), '%'),
  angle: kind('an angle', d(), '°'),
  length: kind('a length', d(1), 'mm', 'in'),
  distance: kind('a distance', d(1), 'km', 'mi'),
  area: kind('an area', d(2), 'cm²', 'in²'),
  timeArea: kind('an area times a time', d(2, 0, 1), 'cm² ms'),
  volume: kind('a volume', d(3), 'cm³', 'in³'),
  mass: kind('a mass', d(0, 1), 'kg', 'lb'),
  time: kind('a time', d(0, 0, 1), 'ms'),
  speed: kind('a speed', d(1, 0, -1), 'm/s', 'ft/s'),
  acceleration: kind('an acceleration', d(1, 0, -2), 'm/s²', 'ft/s²'),
  shaftSpeed: kind('a shaft speed', d(0, 0, -1), 'rpm'),
  angularAcceleration: kind('an angular acceleration', d(0, 0, -2), 'rad/s²'),
  frequency: kind('a frequency', d(0, 0, -1), 'Hz'),
  temperature: kind('a temperature', d(0, 0, 0, 1), '°C', '°F'),
  temperatureDifference: kind('a temperature difference', d(0, 0, 0, 1), 'K', 'Δ°F'),
  pressure: kind('an absolute pressure', d(-1, 1, -2), 'kPa abs', 'psi abs'),
  gaugePressure: kind('a gauge pressure', d(-1, 1, -2), 'bar gauge', 'psi gauge'),
  pressureDifference: kind('a pressure difference', d(-1, 1, -2), 'kPa', 'psi'),
  stress: kind('a stress', d(-1, 1, -2), 'MPa', 'ksi'),
  force: kind('a force', d(1, 1, -2), 'N', 'lbf'),
  torque: kind('a torque', d(2, 1, -2), 'N m', 'lbf ft'),
  energy: kind('an energy', d(2, 1, -2), 'kJ', 'BTU'),
  power: kind('a power', d(2, 1, -3), 'kW', 'hp'),
  massFlow: kind('a mass flow', d(0, 1, -1), 'g/s', 'lb/min'),
  volumeFlow: kind('a volume flow', d(3, 0, -1), 'L/h', 'US gal/h'),
  density: kind('a density', d(-3, 1), 'kg/m³', 'lb/ft³'),
  dynamicViscosity: kind('a dynamic viscosity', d(-1, 1, -1), 'mPa s'),
  kinematicViscosity: kind('a kinematic viscosity', d(2, 0, -1), 'mm²/s'),
  specificHeat: kind('a specific heat', d(2, 0, -2, -1), 'J/(kg K)'),
  specificEnergy: kind('an energy per mass', d(2, 0, -2), 'kJ/kg'),
  conductance: kind('a heat conductance', d(2, 1, -3, -1), 'W/K'),
  conductivity: kind('a thermal conductivity', d(1, 1, -3, -1), 'W/(m K)'),
  filmCoefficient: kind('a heat-transfer coefficient', d(0, 1, -3, -1), 'W/(m² K)'),
  heatCapacity: kind('a heat capacity', d(2, 1, -2, -1), 'kJ/K'),
  expansion: kind('a coefficient of expansion', d(0, 0, 0, -1), '1e-6/K'),
  inertia: kind('a moment of inertia', d(2, 1), 'kg m²', 'lb ft²'),
  unbalance: kind('an unbalance', d(1, 1), 'g mm', 'oz in'),
  swelling: kind('a swelling with pressure', d(1, -1, 2), '%/bar'),
  stiffness: kind('a stiffness', d(0, 1, -2), 'N/mm', 'lbf/in'),
  voltage: kind('a voltage', d(2, 1, -3, 0, -1), 'V'),
  current: kind('a current', d(0, 0, 0, 0, 1), 'A'),
  resistance: kind('an electrical resistance', d(2, 1, -3, 0, -2), 'Ω'),
  inductance: kind('an inductance', d(2, 1, -2, 0, -2), 'mH'),
  specificFuel: kind('a fuel mass per energy', d(-2, 0, 2), 'g/kWh', 'lb/(hp h)'),
  lossCoefficient: kind('a loss coefficient (Δp ρ / m²)', d(-4), '1/m⁴'),
  volumePerDistance: kind('a volume per distance', d(2), 'L/100 km', 'US gal/100 mi'),
  volumePerTurn: kind('a volume per turn', d(3), 'cm³/rev'),
  massPerTurn: kind('a mass per turn', d(0, 1), 'mg/rev'),
  molarMass: kind('a molar mass', d(0, 1, 0, 0, 0, -1), 'g/mol'),
} as const

export type Kind = keyof typeof kinds

export const sameDim = (a: Dim, b: Dim): boolean => a.every((x, i) => x === b[i])
