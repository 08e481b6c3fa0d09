import { fieldValues } from '../build/fieldValues.ts'
import { setEntry, type Sheet } from '../build/sheet.ts'
import { solveBuild } from '../build/solve.ts'
import { overSpeed } from '../session/overSpeed.ts'
import { type Points } from '../quantity/quantity.ts'

/** What is wrong with the car of the invented log: factors on numbers of the sheet that its reader does not know of. */
export type Planted = Readonly<Record<string, number>>
export const planted: Planted = { 'boost.coolerRatedEffectiveness': 0.82, 'fuel.regulator.setting': 0.9 }

/** The sheet of the car that was really driven. */
export const drivenSheet = (sheet: Sheet, faults: Planted = planted): Sheet =>
  Object.entries(faults).reduce((s, [path, factor]) => {
    const value = fieldValues(s).get(path)
    return setEntry(s, path, { value: typeof value === 'number' ? value * factor : { x: (value as Points).x, y: (value as Points).y.map((y) => y * factor) } })
  }, sheet)

type Options = { readonly faults?: Planted; /** Rows a second. */ readonly rate?: number; /** Scatter of the sensors, times the usual. */ readonly noise?: number; readonly separator?: ',' | ';' | '\t'; readonly decimalComma?: boolean; /** Seconds of driving about before and after the pulls. */ readonly about?: number }

/**
 * An invented log: a warm engine driven about, three full pulls, and driven about again, from a sheet with faults planted in it and sensors
 * that scatter. Always the same for the same sheet. No car, logger or driver is meant.
 */
export function exampleLog(sheet: Sheet, { faults = planted, rate = 50, noise = 1, separator = ',', decimalComma = false, about = 30 }: Options = {}): string {
  const truth = drivenSheet(sheet, faults)
  const solved = solveBuild(truth)
  const fields = fieldValues(truth)
  const outside = fields.get('site.airPressure') as number
  const over = (path: string) => overSpeed(solved.points, path)
  const full = { boost: over('boost.boost'), lambda: over('engine.lambda'), primary: over('fuel.primaryDuty'), secondary: over('fuel.secondaryDuty'), rail: over('fuel.railPressure'), charge: over('engine.chargeTemperature'), oilPressure: over('oil.gaugePressure') }
  const low = solved.points.find((p) => p.values['engine.power'] !== undefined)!.speed * 1.15
  const high = (fields.get('engine.speedLimit') as number) * 0.98
  const random = normal(20_417)
  const step = 1 / rate
  const comma = (text: string): string => (decimalComma ? text.replace('.', ',') : text)
  const lines = [['Time (s)', 'Engine speed (rpm)', 'Throttle (%)', 'Manifold pressure (kPa)', 'Lambda', 'Primary duty (%)', 'Secondary duty (%)', 'Fuel pressure (bar)', 'Charge temperature (°C)', 'Coolant temperature (°C)', 'Oil temperature (°C)', 'Oil pressure (bar)', 'Car speed (km/h)', 'Lap'].join(separator)]
  let t = 0, coolant = 356, oil = 358
  const row = (speed: number, throttle: number): void => {
    const at = (of: (n: number) => number): number => of(Math.max(speed, low))
    const load = throttle < 0.9 ? throttle * 0.5 : 1
    const manifold = load < 1 ? 40e3 + load * 80e3 : outside + at(full.boost)
    coolant += step * (0.15 * load - 0.06)
    oil += step * (0.25 * load - 0.09)
    const say = (value: number, scatter: number, digits: number): string => comma((value + scatter * noise * random()).toFixed(digits))
    lines.push([
      comma(t.toFixed(3)), say((speed * 30) / Math.PI, 6, 0), say(throttle * 100, 0.3, 1), say(manifold / 1e3, 1.2, 1), say(load < 1 ? 0.97 : at(full.lambda), 0.008, 3),
      say((load < 1 ? load * 0.5 : at(full.primary)) * 100, 0.6, 2), say(load < 1 ? 0 : at(full.secondary) * 100, load < 1 ? 0 : 0.6, 2), say((load < 1 ? 3.2e5 : at(full.rail)) / 1e5, 0.03, 2),
      say((load < 1 ? 315 : at(full.charge)) - 273.15, 0.5, 1), say(coolant - 273.15, 0.2, 1), say(oil - 273.15, 0.2, 1), say((load < 1 ? 3.5e5 : at(full.oilPressure)) / 1e5, 0.05, 2), say(speed * 0.17, 0.3, 1), '1',
    ].join(separator))
    t += step
  }
  const drive = (seconds: number): void => { for (let i = 0; i < seconds * rate; i++) row(280 + 60 * Math.sin(i / (3 * rate)), 0.25 + 0.1 * Math.sin(i / (2 * rate))) }
  drive(about)
  for (const seconds of [6, 7, 5]) {
    const rows = seconds * rate
    for (let i = 0; i < rows; i++) row(low + ((high - low) * i) / rows, 1)
    drive(8)
  }
  drive(about)
  return lines.join('\r\n')
}

/** Numbers of a normal scatter, the same in every run: sums of twelve even ones. */
function normal(seed: number): () => number {
  let state = seed
  const even = (): number => { state = (Math.imul(state, 1664525) + 1013904223) >>> 0; return state / 2 ** 32 }
  return () => { let sum = -6; for (let i = 0; i < 12; i++) sum += even(); return sum }
}
