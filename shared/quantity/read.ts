import { kinds, type Kind } from './kinds.ts'
import { readNumber, tidy } from './number.ts'
import { type Quantity } from './quantity.ts'
import { fits, sameDimension, unitOf, unitsNamed, unitsOf, type Unit } from './units.ts'
import { dashBore } from './dash.ts'
import { inUnit, write } from './write.ts'

export type Fault = 'empty' | 'syntax' | 'unknown unit' | 'dimension' | 'ambiguous' | 'bounds'
export type Read = { readonly ok: true; readonly value: number; readonly unit: string; readonly at?: string; readonly doubt?: string }
export type Refused = { readonly ok: false; readonly fault: Fault; readonly says: string; readonly choices?: readonly string[] }
/** The text holds arithmetic: load `arithmetic.ts` and let it read. */
export type Arithmetic = { readonly ok: 'arithmetic'; readonly text: string; readonly at?: string }
export type Reading = Read | Refused | Arithmetic

export const refuse = (fault: Fault, says: string, choices?: readonly string[]): Refused => (choices ? { ok: false, fault, says, choices } : { ok: false, fault, says })

/** The longest text a field reads: longer than any honest sum. */
export const longest = 120

/**
 * Reads what was typed into a field of this quantity.
 * A bare number is in the unit the field shows. What has two sensible meanings is asked, never guessed.
 */
export function read(typed: string, of: Quantity, shown: string = of.show?.[0] ?? kinds[of.kind].metric): Reading {
  if (typed.length > longest) return refuse('syntax', `This is ${typed.length} characters long; a field reads up to ${longest}.`)
  const whole = tidy(typed)
  if (whole === '') return refuse('empty', `Type ${kinds[of.kind].says}, such as ${example(of, shown)}.`)
  if (of.reads === 'dash') {
    const size = /^(?:-|dash ?-?|# ?|an ?-? ?)(\d{1,2})(?: ?an)?$/i.exec(whole) ?? /^(\d{1,2}) ?an$/i.exec(whole)
    if (size) return dash(Number(size[1]), of)
  }
  if (/^(?:at\b|@)/i.test(whole)) return refuse('syntax', `Type ${kinds[of.kind].says} before “at”, such as ${example(of, shown)}.`)
  if (/(?: at|@)$/i.test(whole)) return refuse('syntax', 'What belongs after “at” is missing.')
  const [text, at, more] = whole.split(/ at | ?@ ?/i) as [string, string | undefined, string | undefined]
  if (more !== undefined) return refuse('syntax', 'There is more than one “at” here.')
  const number = readNumber(text)
  const withAt = at === undefined ? {} : { at }
  if (number === null) {
    return /[(\d]/.test(text) ? { ok: 'arithmetic', text, ...withAt } : refuse('syntax', `“${whole}” is not a number. Type ${kinds[of.kind].says}, such as ${example(of, shown)}.`)
  }
  if ('ambiguous' in number) {
    const [a, b] = number.ambiguous
    return refuse('ambiguous', `“${text}” can mean ${a} or ${b}. Write it without the comma.`, [a, b].map((n) => text.replace(/[\d,]+/, n)))
  }
  const rest = number.rest.trim()
  if (rest === '') return settle(number.value, unitOf(of.kind, shown), of, withAt)
  if (/^[+\-*/^(]/.test(rest) || (/[+()]|\d\s*[-*/]|[-*/]\s*\d/.test(rest) && unitsNamed(rest).length === 0)) return { ok: 'arithmetic', text, ...withAt }
  const meant = meaning(number.value, rest, of)
  if (!Array.isArray(meant)) return meant as Refused | Arithmetic
  return settle(meant[0], meant[1], of, withAt)
}

/** The unit that a spelling means in this field, or the question that must be asked first. */
export function meaning(value: number, spelling: string, of: Quantity): [number, Unit] | Refused | Arithmetic {
  const asked = ambiguity(value, spelling, of)
  if (asked) return asked
  const named = unitsNamed(spelling)
  const right = named.find((u) => fits(u, of.kind))
  if (right) return [value, right]
  if (named.length > 0) return mismatch(value, named[0]!, of)
  if (/[/^* ·]/.test(spelling)) return { ok: 'arithmetic', text: `${value} ${spelling}` }
  return refuse('unknown unit', `“${spelling}” is not a unit this handbook knows. ${of.name} is ${kinds[of.kind].says}: ${listed(of.kind)}.`)
}

/** Turns a number with its unit into SI and weighs it against what such a quantity can be. */
export function settle(value: number, unit: Unit, of: Quantity, more: { readonly at?: string } = {}): Read | Refused {
  return weigh(value * unit.factor + unit.offset, fullName(unit, of.kind), of, more)
}
/** A field of gauge pressure that was given plain bar goes on saying `bar gauge`: which of the two it is must stay in sight. */
function fullName(unit: Unit, kind: Kind): string {
  const plain = unit.kinds.includes('pressureDifference')
  return plain && kind === 'gaugePressure' ? `${unit.name} gauge` : plain && kind === 'pressure' ? `${unit.name} abs` : unit.name
}

export function weigh(si: number, unit: string, of: Quantity, more: { readonly at?: string } = {}): Read | Refused {
  const [low, high] = of.range
  const usual = `${of.name} is usually ${write(low, of, unit)} to ${write(high, of, unit)}`
  if (!Number.isFinite(si)) return refuse('bounds', `This is not a finite number. ${usual}.`)
  if (of.kind === 'temperature' && si < 0) return refuse('bounds', `This lies below absolute zero. ${usual}.`)
  if (of.whole && !Number.isInteger(si)) return refuse('bounds', `${of.name} is a whole number.`)
  if (low > 0 && si <= 0) return refuse('bounds', `${of.name} must be above zero. ${usual}.`)
  if (low === 0 && si < 0) return refuse('bounds', `${of.name} cannot be negative. ${usual}.`)
  if (of.kind === 'share' && low >= 0 && high <= 1 && si > 1) return refuse('bounds', `${of.name} is a part of a whole, at most 100\u202f%. ${usual}.`)
  const size = Math.max(Math.abs(low), Math.abs(high))
  if (Math.abs(si) > size * 1000 || (low > 0 && si < low / 1000)) return refuse('bounds', `This is more than a thousand times out. ${usual}.`)
  const doubt = si < low || si > high ? { doubt: `${usual}: is this one right?` } : {}
  return { ok: true, value: si, unit, ...more, ...doubt }
}

function dash(size: number, of: Quantity): Read | Refused {
  const bore = dashBore(size)
  return bore === null
    ? refuse('bounds', `There is no dash ${size} in the hose table: 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32.`)
    : weigh(bore, 'mm', of)
}

const gallons = /^(?:gal(?:lons?)?(?:\/(?:h|hr|min|100 ?mi))?|fl ?oz|qt|pt|pints?|quarts?)$|^gp[hm]$/i
const both = (value: number, ...names: string[]) => names.map((n) => `${value} ${n}`)

function ambiguity(value: number, spelling: string, of: Quantity): Refused | null {
  if (gallons.test(spelling) && /volume/i.test(of.kind)) {
    const unit = spelling.replace(/^gph$/i, 'gal/h').replace(/^gpm$/i, 'gal/min').replace(/^gallons?/i, 'gal').replace(/^pints?/i, 'pt').replace(/^quarts?/i, 'qt').replace(/^fl ?oz/i, 'fl oz').replace(/\/hr$/, '/h').replace(/100 ?mi$/, '100 mi')
    return refuse('ambiguous', 'US or imperial? An imperial gallon is a fifth larger.', both(value, `US ${unit}`, `imp ${unit}`))
  }
  if (of.kind === 'temperatureDifference' && unitsNamed(spelling).some((u) => u.kinds.includes('temperature') && !u.kinds.includes(of.kind))) {
    const step = unitsNamed(spelling)[0]!.name === '°F' ? 'Δ°F' : 'K'
    return refuse('ambiguous', `${of.name} is a difference of temperatures, not a temperature. Write it as a difference.`, both(value, step))
  }
  if (of.kind !== 'pressure') return null
  const plainUnit = unitsNamed(spelling).find((u) => u.kinds.includes('pressureDifference'))
  if (!plainUnit) return null
  return gaugeOrAbsolute(value * plainUnit.factor, of, `${value} ${plainUnit.name} abs`)
}

/** Asks whether a pressure was meant as gauge or absolute, where both would be sensible in this field. */
export function gaugeOrAbsolute(si: number, of: Quantity, absolute = `${Number((si / 1000).toPrecision(5))} kPa abs`): Refused | null {
  const inRange = (p: number) => p >= of.range[0] && p <= of.range[1]
  // A negative number can only be gauge: it is offered as what it would be, not taken.
  if (si <= 0 && inRange(si + 101325)) return refuse('dimension', `${of.name} is absolute, and this can only be gauge. At sea level it is ${seaLevel(si)}.`, [seaLevel(si)])
  return inRange(si) && inRange(si + 101325)
    ? refuse('ambiguous', `Gauge or absolute? Gauge reads zero in open air; absolute about 101 kPa. As gauge at sea level this is ${seaLevel(si)}.`, [absolute, seaLevel(si)])
    : null
}

const seaLevel = (gauge: number): string => `${Number(((gauge + 101325) / 1000).toPrecision(5))} kPa abs`

function mismatch(value: number, unit: Unit, of: Quantity): Refused {
  const given = kinds[unit.kinds[0]!].says
  const wanted = kinds[of.kind].says
  if (of.kind === 'pressure' && unit.kinds.includes('gaugePressure')) return refuse('dimension', `${of.name} is an absolute pressure and ${unit.name} is gauge: at sea level this is ${seaLevel(value * unit.factor)}.`, [seaLevel(value * unit.factor)])
  if (of.kind === 'gaugePressure' && unit.kinds.includes('pressure')) return refuse('dimension', `${of.name} is a gauge pressure and ${unit.name} is absolute: take off the air pressure outside, about 101.3 kPa at sea level.`)
  if (of.kind === 'volumeFlow' && unit.kinds.includes('massFlow')) return refuse('dimension', `${of.name} is a volume flow and ${unit.name} is a mass flow: divide by the fluid's density (n-heptane, on which injectors are often rated, is about 0.684 kg/L at 20 °C).`)
  const how = sameDimension(unit, of.kind) ? ' They share a dimension but do not mean the same.' : ''
  return refuse('dimension', `${of.name} is ${wanted}; ${unit.name} is ${given}.${how} Write ${listed(of.kind)}.`)
}

const listed = (kind: Kind): string => [...new Set(unitsOf(kind).map((u) => u.name))].slice(0, 5).join(', ')
/** A round number from the middle of the range, in the unit the field shows. */
function example(of: Quantity, shown: string): string {
  const middle = (of.range[0] + of.range[1]) / 2
  const unit = unitOf(of.kind, shown)
  return write(of.whole ? middle : Number(inUnit(middle, of, shown).toPrecision(1)) * unit.factor + unit.offset, of, shown, 2)
}
