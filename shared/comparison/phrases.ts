import { type Weighed } from '../build/margins.ts'

/**
 * What a link has more or less of, as a builder would say it, by margin: "12 % more room before choke". Links of one group move for one
 * reason; only the one with least left is told.
 */
export const phrases: Readonly<Record<string, { readonly of: string; readonly group?: string; readonly others?: string; /** Its name within a sentence, where its title is one itself. */ readonly link?: string }>> = {
  'manifold-sensor-range': { of: 'range left on the manifold sensor' },
  'coil-charge-time': { of: 'time in hand to charge the coils' },
  'charging-budget-idle': { of: 'current to spare at hot idle' },
  'actuator-holds': { of: 'pressure in hand before the wastegate is pushed open', link: 'what keeps the wastegate shut' },
  'actuator-opens': { of: 'pressure in hand to open the wastegate', link: 'what opens the wastegate' },
  'back-pressure': { of: 'room below the back-pressure you accept' },
  'charge-temperature': { of: 'in hand on charge temperature' },
  'exhaust-temperature': { of: 'in hand on exhaust temperature', link: 'exhaust temperature' },
  'surge': { of: 'room before surge' },
  'choke': { of: 'room before choke' },
  'compressor-overspeed': { of: 'turbocharger speed in hand' },
  'boost-by-wanted-speed': { of: 'in hand on the speed by which boost is wanted' },
  'wastegate-passes': { of: 'wastegate flow to spare', link: 'wastegate flow' },
  'fuel-pump-flow': { of: 'pump flow in reserve' },
  'injector-closing-window': { of: 'of a turn left for the injectors to close', group: 'injector time', others: 'duty below hand-over' },
  'injector-driver-current': { of: 'current in hand at the injector driver' },
  'last-injector-pressure': { of: 'rail pressure in hand at the last injector' },
  'primary-duty-handover': { of: 'duty left on the primaries below hand-over', group: 'injector time', others: 'the closing window' },
  'primary-pulse-idle': { of: 'pulse at idle above the shortest the primaries repeat' },
  'regulator-bypass-idle': { of: 'regulator bypass to spare at idle' },
  'secondary-pulse-handover': { of: 'pulse at hand-over above the shortest the secondaries repeat' },
  'session-fuel': { of: 'fuel left after a session' },
  'vapour-hot-stop': { of: 'pressure in hand against vapour after a hot stop' },
  'rotor-bearing-inertia': { of: 'rotor bearing film under inertia', group: 'film', others: 'the other bearing films' },
  'rotor-bearing-gas': { of: 'rotor bearing film at peak gas load', group: 'film', others: 'the other bearing films' },
  'main-bearing-film': { of: 'main bearing film', group: 'film', others: 'the other bearing films' },
  'seal-oil': { of: 'oil for the seals over the reference dose' },
  'shaft-oil-pressure': { of: 'oil pressure in hand at the shaft' },
  'oil-temperature': { of: 'in hand on oil temperature' },
  'boil-margin': { of: 'boil margin', group: 'coolant', others: 'coolant temperature' },
  'coolant-temperature': { of: 'in hand on coolant temperature', group: 'coolant', others: 'the boil margin' },
  'clutch-torque': { of: 'torque in hand at the clutch', group: 'torque', others: 'the rest of the driveline' },
  'gearbox-torque': { of: 'torque in hand at the gearbox', group: 'torque', others: 'the rest of the driveline' },
  'differential-torque': { of: 'torque in hand at the differential', group: 'torque', others: 'the rest of the driveline' },
  'half-shaft-torque': { of: 'torque in hand at the half-shafts', group: 'torque', others: 'the rest of the driveline' },
  'flywheel-speed': { of: 'speed in hand on the flywheel' },
}

/** What the model leaves out of a choice, by the fields it touches. Common practice, no source. */
export const leftOut: readonly { readonly of: RegExp; readonly says: string }[] = [
  { of: /^boost\.(turbine|compressorMap|topSpeed)/, says: 'How fast the wheels spin up after the throttle opens is not in a steady model: a larger turbine or compressor answers later than these speeds tell.' },
  { of: /^boost\.(wastegate|actuator)/, says: 'How steadily another valve or actuator holds boost while speed rises is not in the model.' },
  { of: /^boost\.(target|wanted)|^engine\.(compressionRatio|lambdaCurve)/, says: 'Knock is not in it, and this choice bears on knock before anything else.' },
  { of: /^boost\.cooler/, says: 'Where a larger core takes its air from, and what stands behind it, is counted only as far as the sheet says.' },
  { of: /^fuel\.(primary|secondary|handover)/, says: 'Spray, wall film and the feel of tip-in are not in it: a larger injector idles worse than its pulse alone tells.' },
  { of: /^fuel\.pump/, says: 'Noise, and the heat that a larger pump puts into the tank, are not in it.' },
  { of: /^driveline\.clutch/, says: 'Pedal effort, how softly it takes up and what a harder clutch does to the gearbox in a fast shift are not in the model.' },
  { of: /^driveline\.flywheel/, says: 'How steadily it idles and how easily it stalls are not in it.' },
  { of: /^oil\.(grade|viscosity|.*clearance)/, says: 'Wear while it is cold, and what the oil is worth after hours of heat, are not in it.' },
  { of: /^cooling\.(radiator|core|fan|pump)/, says: 'Air that finds a way round the core is not in it.' },
  { of: /^engine\.veCurve/, says: 'What the same change does to exhaust noise and to idle is not in it.' },
]

/** Within a sentence, a capital that only began one is small: `NBR` stays as it is. */
export const lower = (text: string): string => (/^[A-Z][a-z ]/.test(text) ? text[0]!.toLowerCase() + text.slice(1) : text)
/** What a link is called within a sentence. */
export const linkName = ({ id, margin }: Pick<Weighed, 'id' | 'margin'>): string => phrases[id]?.link ?? lower(margin.title)
