import { boostPressure, chargeTemperature, lambda, manifoldPressure, shaftSpeed } from '../engine/quantities.ts'
import { carSpeedOf, coolantTemperatureOf } from '../cooling/quantities.ts'
import { dutyCycle, railPressure } from '../fuel/quantities.ts'
import { oilPressure, oilTemperature } from '../oil/quantities.ts'
import { quantity, role, type Quantity } from '../quantity/quantity.ts'
import { fits, unitsNamed, unitsOf, type Unit } from '../quantity/units.ts'

const time = quantity('Time', 't', 'time', [0, 36000], 0.01, { show: ['s', 's'] })
const throttle = quantity('Throttle', 'x_t', 'share', [0, 1], 0.02)
const ratio = quantity('Air-fuel ratio', 'L', 'number', [6, 25], 0.1)

/** What a column of a log can be. `value` is the path of the solved point that it is laid over. */
export type Channel = { readonly quantity: Quantity; /** Words that name it, all lower case. */ readonly words: RegExp; readonly not?: RegExp; readonly value?: string; /** Unit of a bare number. */ readonly bare: string }

export const channels = {
  time: { quantity: time, words: /^(time|zeit|temps|t|elapsed|log time|sample time|seconds)\b/, bare: 's' },
  speed: { quantity: shaftSpeed, words: /\b(rpm|engine speed|shaft speed|revs|motor speed|drehzahl|n)\b/, not: /turbo|wheel|limit|target|fan|pump/, value: 'engine.speed', bare: 'rpm' },
  throttle: { quantity: throttle, words: /throttle|pedal|accelerator|\btps\b/, not: /target|volt/, bare: '%' },
  boost: { quantity: boostPressure, words: /\bboost\b/, not: /target|duty|control|solenoid/, value: 'boost.boost', bare: 'bar gauge' },
  manifold: { quantity: manifoldPressure, words: /manifold|\bmap\b|inlet pressure|intake pressure/, not: /temp|target/, value: 'engine.manifoldPressure', bare: 'kPa abs' },
  lambda: { quantity: lambda, words: /lambda|λ|equivalence/, not: /target|correction|trim/, value: 'engine.lambda', bare: '1' },
  ratio: { quantity: ratio, words: /air.?fuel|\bafr\b/, not: /target|trim/, bare: '1' },
  primaryDuty: { quantity: role(dutyCycle, 'D_1', 'Duty of a primary'), words: /(primary|stage ?1|first stage|injector|inj)\b.*duty|duty.*(primary|stage ?1|injector)/, not: /second|stage ?2|wastegate|boost/, value: 'fuel.primaryDuty', bare: '%' },
  secondaryDuty: { quantity: role(dutyCycle, 'D_2', 'Duty of a secondary'), words: /(secondary|stage ?2|second stage)\b.*duty|duty.*(secondary|stage ?2)/, value: 'fuel.secondaryDuty', bare: '%' },
  fuelPressure: { quantity: railPressure, words: /(fuel|rail)\b.*press|press.*(fuel|rail)/, value: 'fuel.railPressure', bare: 'bar gauge' },
  charge: { quantity: chargeTemperature, words: /(charge|intake|inlet|manifold|air)\b.*temp|temp.*(charge|intake|inlet)|\biat\b/, not: /oil|coolant|outside|ambient|before|compressor/, value: 'engine.chargeTemperature', bare: '°C' },
  coolant: { quantity: coolantTemperatureOf, words: /(coolant|water)\b.*temp|temp.*(coolant|water)|\bect\b|\bclt\b/, value: 'cooling.coolantTemperature', bare: '°C' },
  oil: { quantity: oilTemperature, words: /oil\b.*temp|temp.*oil/, value: 'oil.temperature', bare: '°C' },
  oilPressure: { quantity: oilPressure, words: /oil\b.*press|press.*oil/, value: 'oil.gaugePressure', bare: 'bar gauge' },
  carSpeed: { quantity: carSpeedOf, words: /(car|vehicle|road|ground|gps) ?speed|\bspeed\b|geschwindigkeit/, not: /engine|shaft|turbo|wheel/, bare: 'km/h' },
} as const satisfies Readonly<Record<string, Channel>>
export type ChannelId = keyof typeof channels
export const channelIds = Object.keys(channels) as ChannelId[]

/** What the reader, or the handbook, takes a column for. */
export type Meaning = { readonly channel: ChannelId; readonly unit: string }
/** Meanings by column number; a column without one is left aside. */
export type Mapping = Readonly<Record<number, Meaning>>

/** The units a channel can be logged in. Pressures of either kind may stand in either column: kPa of a boost column is gauge. */
export const unitsFor = (id: ChannelId): readonly Unit[] => unitsOf(channels[id].quantity.kind)

/** A value of a column in SI. */
export const toSi = (value: number, { channel, unit }: Meaning): number => {
  const of = unitsFor(channel).find((u) => u.name === unit)
  return of ? value * of.factor + of.offset : NaN
}

/** The name apart from the unit told in it: `Oil pressure (bar)`, `T_coolant [°C]`, `Speed, km/h`. */
export function nameAndUnit(name: string): { readonly name: string; readonly unit: string } {
  const cut = /^(.*?)\s*(?:\[([^\]]*)\]|\(([^)]*)\)|[,;/]\s*([^,;]{1,8}))\s*$/.exec(name)
  return cut && cut[1] !== '' ? { name: cut[1]!, unit: (cut[2] ?? cut[3] ?? cut[4] ?? '').trim() } : { name, unit: '' }
}

/** A unit as a logger writes it, as this channel's own. Gauge or absolute follows from what the column is. */
function unitMeant(text: string, id: ChannelId): string | null {
  if (text === '' || text === '-' || text === '–') return null
  const kind = channels[id].quantity.kind
  const spelled = text.replace(/^deg ?([CFK])$/i, '°$1').replace(/^([CF])$/i, '°$1').replace(/^(1\/min|min-1|rev\/min|u\/min)$/i, 'rpm').replace(/^(kph|kmh)$/i, 'km/h').replace(/\s*\((?:a|abs)\)$/i, ' abs').replace(/\s*\((?:g|gauge)\)$/i, ' gauge').replace(/^(kPa|bar|psi|mbar|hPa)a$/i, '$1 abs').replace(/^(kPa|bar|psi)g$/i, '$1 gauge')
  for (const spelling of kind === 'pressure' ? [`${spelled} abs`, spelled] : kind === 'gaugePressure' ? [`${spelled} gauge`, spelled] : [spelled]) {
    const found = unitsNamed(spelling).find((u) => fits(u, kind))
    if (found) return found.name
  }
  return null
}

/** What each column seems to be, by its name and its unit; each channel once. */
export function guessed(names: readonly string[], units: readonly string[]): Mapping {
  const found: Record<number, Meaning> = {}
  const taken = new Set<ChannelId>()
  for (const id of channelIds) {
    const channel: Channel = channels[id]
    const column = names.findIndex((raw, i) => {
      if (found[i]) return false
      const name = plainName(nameAndUnit(raw).name)
      return channel.words.test(name) && !channel.not?.test(name)
    })
    if (column < 0 || taken.has(id)) continue
    const told = units[column] || nameAndUnit(names[column]!).unit
    found[column] = { channel: id, unit: unitMeant(told, id) ?? channel.bare }
    taken.add(id)
  }
  return found
}
const plainName = (name: string): string => name.toLowerCase().replace(/[_.\-/]+/g, ' ').replace(/\s+/g, ' ').trim()

/** By what a file of the same logger is known again: its names and units. */
export const signature = (names: readonly string[], units: readonly string[]): string => [...names, ...units].join('\u001f').slice(0, 4000)
