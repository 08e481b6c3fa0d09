import { kinds, sameDim, type Kind } from './kinds.ts'

/** A unit: SI value = number * factor + offset. `kinds` are those it may stand for; `also` are other spellings. */
export type Unit = { readonly name: string; readonly factor: number; readonly offset: number; readonly kinds: readonly Kind[]; readonly also: readonly string[] }

const lb = 0.45359237
const inch = 0.0254
const lbf = 4.4482216152605
const psi = lbf / inch ** 2
const usGallon = 3.785411784e-3
const impGallon = 4.54609e-3
const hp = 550 * lbf * 0.3048
const btu = 1055.05585262
const turn = 2 * Math.PI

const all: Unit[] = []
const unit = (kindNames: string, name: string, factor: number, also = '', offset = 0) =>
  all.push({ name, factor, offset, kinds: kindNames.split(' ') as Kind[], also: also ? also.split('|') : [] })

unit('number share', '1', 1)
unit('share', '%', 0.01, 'percent|pct')
unit('share', 'ppm', 1e-6)
unit('angle', '°', Math.PI / 180, 'deg|degree|degrees')
unit('angle', 'rad', 1)
unit('length distance', 'mm', 1e-3)
unit('length', 'µm', 1e-6, 'um|μm|micron|microns')
unit('length distance', 'cm', 1e-2)
unit('length distance', 'm', 1, 'metre|meter|metres|meters')
unit('length distance', 'km', 1e3)
unit('length distance', 'in', inch, 'inch|inches|"|″')
unit('length', 'thou', inch / 1000, 'mil')
unit('length distance', 'ft', 0.3048, 'foot|feet|\'')
unit('distance', 'mi', 1609.344, 'mile|miles')
unit('area', 'cm²', 1e-4)
unit('area', 'mm²', 1e-6)
unit('area', 'm²', 1)
unit('area', 'in²', inch ** 2, 'sq in')
unit('timeArea', 'cm² ms', 1e-7, 'cm2 ms|cm²·ms')
unit('timeArea', 'm² s', 1)
unit('volume volumePerTurn', 'cm³', 1e-6, 'cc|ml|mL|ccm')
unit('volumePerTurn', 'cm³/rev', 1e-6, 'cc/rev|ml/rev')
unit('volumePerTurn', 'mm³/rev', 1e-9, 'mm3/rev')
unit('volume', 'mm³', 1e-9, 'µL|uL')
unit('volume', 'L', 1e-3, 'l|litre|liter|litres|liters|dm³')
unit('volume', 'm³', 1)
unit('volume', 'in³', inch ** 3, 'cu in|ci')
unit('volume', 'US gal', usGallon, 'gal US|USgal|us gallon')
unit('volume', 'imp gal', impGallon, 'gal imp|UK gal|impgal|imperial gallon')
unit('volume', 'US fl oz', usGallon / 128, 'fl oz US')
unit('volume', 'imp fl oz', impGallon / 160, 'fl oz imp')
unit('volume', 'US qt', usGallon / 4, 'qt US')
unit('volume', 'imp qt', impGallon / 4)
unit('volume', 'US pt', usGallon / 8)
unit('volume', 'imp pt', impGallon / 8)
unit('mass', 'kg', 1)
unit('mass massPerTurn', 'g', 1e-3)
unit('mass massPerTurn', 'mg', 1e-6)
unit('massPerTurn', 'mg/rev', 1e-6)
unit('mass', 'lb', lb, 'lbs|pound|pounds|lbm')
unit('mass', 'oz', lb / 16)
unit('time', 'ms', 1e-3)
unit('time', 'µs', 1e-6, 'us|μs')
unit('time', 's', 1, 'sec|second|seconds')
unit('time', 'min', 60, 'minute|minutes')
unit('time', 'h', 3600, 'hr|hour|hours')
unit('speed', 'm/s', 1)
unit('speed', 'mm/s', 1e-3)
unit('speed', 'km/h', 1 / 3.6, 'kph|kmh')
unit('speed', 'mph', 0.44704, 'mi/h')
unit('speed', 'ft/s', 0.3048, 'fps')
unit('acceleration', 'm/s²', 1)
unit('acceleration', 'ft/s²', 0.3048)
unit('acceleration', 'gₙ', 9.80665, 'gn')
unit('shaftSpeed', 'rpm', turn / 60, 'r/min|1/min|rev/min')
unit('shaftSpeed', 'rad/s', 1)
unit('shaftSpeed', 'rev/s', turn)
unit('angularAcceleration', 'rad/s²', 1)
unit('angularAcceleration', 'rpm/s', turn / 60)
unit('frequency', 'Hz', 1)
unit('frequency', '1/s', 1, 's⁻¹')
unit('frequency', '1/h', 1 / 3600)
unit('frequency', 'kHz', 1e3)
unit('temperature', '°C', 1, 'C|degC|celsius|℃', 273.15)
unit('temperature', '°F', 5 / 9, 'F|degF|fahrenheit|℉', 273.15 - (32 * 5) / 9)
unit('temperature temperatureDifference', 'K', 1, 'kelvin')
unit('temperature', '°R', 5 / 9, 'degR|rankine')
unit('temperatureDifference', 'Δ°C', 1, 'delta C|deltaC')
unit('temperatureDifference', 'Δ°F', 5 / 9, 'delta F|deltaF')
const pressures: readonly (readonly [string, number, string?])[] = [
  ['kPa', 1e3], ['bar', 1e5], ['psi', psi, 'lbf/in²'], ['Pa', 1], ['MPa', 1e6], ['mbar', 100], ['hPa', 100],
  ['inHg', 3386.389, 'in Hg'], ['mmHg', 133.322387415, 'torr'], ['inH₂O', 249.08891, 'inH2O'], ['atm', 101325], ['kgf/cm²', 98066.5],
]
for (const [name, factor, also] of pressures) {
  const spelt = (suffixes: string[]) => [name, ...(also ? [also] : [])].flatMap((n) => suffixes.map((s) => n + s)).join('|')
  unit('pressure', `${name} abs`, factor, spelt(['a', '(a)', ' a', ' absolute']))
  unit('gaugePressure', `${name} gauge`, factor, spelt(['g', '(g)', ' g', ' gage']))
  unit('pressure gaugePressure pressureDifference', name, factor, also)
}
unit('stress', 'MPa', 1e6, 'N/mm²')
unit('stress', 'GPa', 1e9)
unit('stress', 'Pa', 1)
unit('stress', 'psi', psi)
unit('stress', 'ksi', psi * 1000)
unit('force', 'N', 1)
unit('force', 'kN', 1e3)
unit('force', 'lbf', lbf, 'lb')
unit('force', 'kgf', 9.80665)
unit('torque', 'N m', 1, 'Nm|N·m|N*m')
unit('torque', 'lbf ft', lbf * 0.3048, 'lb ft|ft lb|ft lbf|lbft|ftlb|lb-ft|ft-lb|lbf·ft')
unit('torque', 'lbf in', lbf * inch, 'lb in|in lb|in lbf|lb-in|in-lb')
unit('torque', 'kgf m', 9.80665)
unit('energy', 'J', 1)
unit('energy', 'kJ', 1e3)
unit('energy', 'mJ', 1e-3)
unit('energy', 'MJ', 1e6)
unit('energy', 'kWh', 3.6e6)
unit('energy', 'BTU', btu, 'Btu')
unit('power', 'W', 1)
unit('power', 'kW', 1e3)
unit('power', 'hp', hp, 'bhp')
unit('power', 'PS', 735.49875, 'metric hp')
unit('power', 'BTU/min', btu / 60)
unit('massFlow', 'kg/s', 1)
unit('massFlow', 'g/s', 1e-3)
unit('massFlow', 'kg/h', 1 / 3600)
unit('massFlow', 'g/h', 1e-3 / 3600)
unit('massFlow', 'kg/min', 1 / 60)
unit('massFlow', 'g/min', 1e-3 / 60)
unit('massFlow', 'lb/min', lb / 60)
unit('massFlow', 'lb/h', lb / 3600, 'lb/hr|lbs/hr')
unit('massFlow', 'lb/s', lb)
unit('volumeFlow', 'm³/s', 1)
unit('volumeFlow', 'cm³/min', 1e-6 / 60, 'cc/min|ml/min|mL/min|ccm/min')
unit('volumeFlow', 'L/h', 1e-3 / 3600, 'l/h|lph|L/hr')
unit('volumeFlow', 'L/min', 1e-3 / 60, 'l/min|lpm')
unit('volumeFlow', 'L/s', 1e-3, 'l/s')
unit('volumeFlow', 'm³/h', 1 / 3600)
unit('volumeFlow', 'm³/min', 1 / 60)
unit('volumeFlow', 'US gal/h', usGallon / 3600, 'US gph')
unit('volumeFlow', 'US gal/min', usGallon / 60, 'US gpm')
unit('volumeFlow', 'imp gal/h', impGallon / 3600)
unit('volumeFlow', 'imp gal/min', impGallon / 60)
unit('volumeFlow', 'ft³/min', 0.3048 ** 3 / 60, 'cfm')
unit('density', 'kg/m³', 1)
unit('density', 'g/cm³', 1e3, 'kg/L|kg/l|g/ml|g/cc')
unit('density', 'g/L', 1)
unit('density', 'lb/ft³', lb / 0.3048 ** 3)
unit('density', 'lb/US gal', lb / usGallon)
unit('dynamicViscosity', 'Pa s', 1)
unit('dynamicViscosity', 'µPa s', 1e-6, 'uPa s|μPa s')
unit('dynamicViscosity', 'mPa s', 1e-3, 'cP|mPa·s|mPas')
unit('kinematicViscosity', 'm²/s', 1)
unit('kinematicViscosity', 'mm²/s', 1e-6, 'cSt')
unit('specificHeat', 'J/(kg K)', 1, 'J/kg/K|J/kgK')
unit('specificHeat', 'kJ/(kg K)', 1e3, 'kJ/kg/K')
unit('specificEnergy', 'J/kg', 1)
unit('specificEnergy', 'kJ/kg', 1e3)
unit('specificEnergy', 'MJ/kg', 1e6)
unit('conductance', 'W/K', 1)
unit('conductance', 'kW/K', 1e3)
unit('conductivity', 'W/(m K)', 1, 'W/m/K|W/mK')
unit('filmCoefficient', 'W/(m² K)', 1, 'W/m²/K|W/m2K')
unit('heatCapacity', 'J/K', 1)
unit('heatCapacity', 'kJ/K', 1e3)
unit('expansion', '1/K', 1)
unit('expansion', '1e-6/K', 1e-6, 'ppm/K|µm/(m K)')
unit('inertia', 'kg m²', 1, 'kgm²')
unit('inertia', 'g m²', 1e-3)
unit('inertia', 'kg mm²', 1e-6)
unit('inertia', 'kg cm²', 1e-4)
unit('inertia', 'lb ft²', lb * 0.3048 ** 2)
unit('inertia', 'lb in²', lb * inch ** 2)
unit('unbalance', 'g mm', 1e-6)
unit('unbalance', 'kg m', 1)
unit('unbalance', 'g cm', 1e-5)
unit('unbalance', 'oz in', (lb / 16) * inch)
unit('swelling', '%/bar', 1e-7)
unit('swelling', '1/Pa', 1)
unit('stiffness', 'N/mm', 1e3)
unit('stiffness', 'kN/mm', 1e6)
unit('stiffness', 'N/m', 1)
unit('stiffness', 'lbf/in', lbf / inch, 'lb/in')
unit('voltage', 'V', 1)
unit('voltage', 'mV', 1e-3)
unit('current', 'A', 1)
unit('current', 'mA', 1e-3)
unit('resistance', 'Ω', 1, 'ohm|ohms|Ohm')
unit('resistance', 'mΩ', 1e-3, 'mohm|milliohm')
unit('inductance', 'H', 1)
unit('inductance', 'mH', 1e-3)
unit('specificFuel', 'g/kWh', 1e-3 / 3.6e6, 'g/(kW h)')
unit('specificFuel', 'lb/(hp h)', lb / (hp * 3600), 'lb/hp/h|lb/hph')
unit('specificFuel', 'kg/J', 1)
unit('lossCoefficient', '1/m⁴', 1, 'm^-4|1/m^4')
unit('volumePerDistance', 'L/100 km', 1e-8, 'L/100km|l/100km')
unit('volumePerDistance', 'US gal/100 mi', usGallon / 160934.4)
unit('volumePerDistance', 'imp gal/100 mi', impGallon / 160934.4)
unit('volumePerDistance', 'cm³/km', 1e-9, 'cc/km')
unit('molarMass', 'g/mol', 1e-3)
unit('molarMass', 'kg/mol', 1)

export const units: readonly Unit[] = all

const bySpelling = new Map<string, Unit[]>()
for (const u of all) for (const spelling of [u.name, ...u.also]) {
  const key = plain(spelling)
  bySpelling.set(key, [...(bySpelling.get(key) ?? []), u])
}

/** Spelling with spaces, superscripts and dots made one: `N·m`, `N m` and `cm^2`, `cm²` meet. Case matters (mN, MN) unless nothing else fits. */
export function plain(text: string): string {
  return text.trim().replace(/²|\^2/g, '2').replace(/³|\^3/g, '3').replace(/⁴|\^4/g, '4').replace(/[·⋅*]/g, ' ').replace(/\s*\/\s*/g, '/').replace(/\s+/g, ' ').replace(/^º/, '°')
}

/** Case is forgiven where it says nothing; between milli and mega it says a factor of a thousand million. */
const prefixed = /^[mM](?:g|s|V|A|H|Ω|ohm|J|Pa|Pas)(?:$|[/ ])/
const milliForMega = (typed: string, spelling: string): boolean =>
  typed[0] !== spelling[0] && (prefixed.test(spelling) || (/^m[mbL]/.test(spelling) && /^M.*[a-z]/.test(typed)))

/** All units that a spelling can mean: first as typed, then in any case. */
export function unitsNamed(text: string): readonly Unit[] {
  const key = plain(text)
  const exact = bySpelling.get(key) ?? bySpelling.get(key.replace(/ /g, ''))
  if (exact) return exact
  const low = key.toLowerCase()
  const loose: Unit[] = []
  for (const [spelling, list] of bySpelling) if (spelling.toLowerCase() === low && !milliForMega(key, spelling)) loose.push(...list)
  return loose.length > 0 && new Set(loose.map((u) => u.factor)).size === 1 ? loose : []
}

/** The unit of that name in that kind, for display. Throws on a name that does not exist: a mistake in our own declarations. */
export function unitOf(kind: Kind, name: string): Unit {
  const found = unitsNamed(name).find((u) => u.kinds.includes(kind))
  if (!found) throw new Error(`no unit ${name} of ${kind}`)
  return found
}

export const unitsOf = (kind: Kind): readonly Unit[] => all.filter((u) => u.kinds.includes(kind))
export const dimOf = (u: Unit) => kinds[u.kinds[0]!].dim
export const fits = (u: Unit, kind: Kind): boolean => u.kinds.includes(kind)
export const sameDimension = (u: Unit, kind: Kind): boolean => sameDim(dimOf(u), kinds[kind].dim)
