import { formula, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { untraced } from '../formula/trace.ts'
import { integrate } from '../numerics/rungeKutta.ts'
import { role } from '../quantity/quantity.ts'
import { heatOfRadiator } from './heatOfRadiator.ts'
import { airSideShare, boilingPointOf, closureOf, coolantFlowOf, coolantTemperatureOf, coolerConductance, coreAir, coreAirTemperatureOf, courseTime, cycleTimeOf, flowExponent, glycolVolume, heatFlow, loadShareOf, metalConductanceOf, metalTemperatureOf, storedPerKelvin } from './quantities.ts'
import { radiatorFlow } from './radiatorFlow.ts'
import { thermostatShare } from './thermostatShare.ts'

/** Coolant and metal over laps of full load and none, until the time is up or the coolant boils. */
export const about = {
  name: 'Coolant and metal over a session',
  in: {
    heat: role(heatFlow, 'Q_f', 'Heat at full load'), share: loadShareOf, cycle: cycleTimeOf, time: role(courseTime, 't_e', 'Length of the session'), start: role(coolantTemperatureOf, 'T_0', 'Metal and coolant at the start'),
    metalCapacity: role(storedPerKelvin, 'C_s', 'Heat capacity of the metal'), coolantCapacity: role(storedPerKelvin, 'C_k', 'Heat capacity of the coolant'), toCoolant: metalConductanceOf,
    pump: role(coolantFlowOf, 'V_p', 'Flow of the pump'), glycol: glycolVolume, opens: role(coolantTemperatureOf, 'T_t0', 'Thermostat begins to open'), open: role(coolantTemperatureOf, 'T_t1', 'Thermostat fully open'),
    conductance: role(coolerConductance, 'UA_0', 'Rated conductance'), airShare: airSideShare, air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), airExponent: role(flowExponent, 'm_a', 'Air-side exponent'),
    ratedCoolant: role(coolantFlowOf, 'V_c0', 'Rated coolant flow'), coolantExponent: role(flowExponent, 'm_c', 'Coolant-side exponent'), airTemperature: coreAirTemperatureOf,
    limit: role(coolantTemperatureOf, 'T_lim', 'Highest coolant temperature you accept'), boiling: boilingPointOf,
  },
  out: {
    peak: role(coolantTemperatureOf, 'T_max', 'Highest coolant temperature'), end: role(coolantTemperatureOf, 'T_e', 'Coolant at the end'), metal: metalTemperatureOf,
    within: role(courseTime, 't_lim', 'Time within the limit'), lasted: role(courseTime, 't_b', 'Time that the run lasted'), open: closureOf,
  },
  steps: [
    'C_s dT_s/dt = Q − G (T_s − T_c): Q is the full heat for the loaded part of each lap, nothing for the rest.',
    'C_k dT_c/dt = G (T_s − T_c) − Q_r: the radiator’s heat at the thermostat’s opening.',
    'Runge-Kutta steps by Dormand and Prince, each as long as an error of a millionth allows, restarted at every change of load.',
    'The limit’s crossing is interpolated within its step. Where the coolant boils, the run ends.',
    'What does not close is the heat put in, less radiator heat added up by Simpson’s rule over the steps, less heat stored.',
  ],
  source: ['hairer-ode', 'II.4 to II.6; the equations are the first law for two bodies'],
  notes: 'One temperature for the metal and one for the coolant. Oil and charge cooler have their own in the track session.',
} as const satisfies About

const relative = 1e-6
/** More than any session takes: numbers far from any engine end here, not the reader's patience. */
const mostSteps = 20_000, mostLaps = 2000

export const coolantCourse = formula<typeof about>('coolant-course', {}, (x) => untraced(() => {
  const { heat, share, cycle, time, start, metalCapacity, coolantCapacity, toCoolant, pump, opens, open, limit, boiling } = x
  const cast = (temperature: number): number => heatOfRadiator({ ...x, temperature, coolant: radiatorFlow({ pump, opening: thermostatShare({ temperature, opens, open }) }) })
  if (time / cycle > mostLaps) throw new NoAnswer('session', `More than ${mostLaps} laps in one session: check its length and that of a lap.`)
  let steps = 0
  let y: readonly number[] = [start, start], t = 0, peak = start as number, until = start > limit ? 0 : Infinity, into = 0, out = 0
  const phase = (seconds: number, load: number): boolean => {
    const rates = (_: number, s: Float64Array, ds: Float64Array): void => {
      const moved = toCoolant * (s[0]! - s[1]!)
      ds[0] = (load - moved) / metalCapacity
      ds[1] = (moved - cast(s[1]!)) / coolantCapacity
    }
    const count = Math.min(2000, 2 * Math.ceil(seconds / 8))
    const at = Array.from({ length: count + 1 }, (_, i) => (seconds * i) / count)
    const course = integrate(rates, { from: 0, to: seconds, start: y, relative, absolute: 1e-6, at, until: (_, s) => boiling - s[1]!, maxSteps: mostSteps - steps })
    steps += course.steps + course.rejected
    if (course.ended === 'too many steps') throw new NoAnswer('session', 'Heat moves too fast here against what is stored: check masses, volume and conductances.')
    for (const [i, row] of course.y.entries()) {
      peak = Math.max(peak, row[1]!)
      if (i > 0 && until === Infinity && row[1]! > limit) { const before = course.y[i - 1]![1]!; until = t + at[i - 1]! + ((at[i]! - at[i - 1]!) * (limit - before)) / (row[1]! - before) }
    }
    const boils = course.ended === 'at the event'
    const rows = boils ? course.y.length - ((course.y.length + 1) % 2) : course.y.length
    for (let i = 2; i < rows; i += 2) out += ((at[i]! - at[i - 2]!) / 6) * (cast(course.y[i - 2]![1]!) + 4 * cast(course.y[i - 1]![1]!) + cast(course.y[i]![1]!))
    if (boils) {
      const rest = course.last.t - at[rows - 1]!
      out += (rest / 2) * (cast(course.y[rows - 1]![1]!) + cast(course.last.y[1]!))
      peak = boiling
      if (until === Infinity && limit < boiling) until = t + course.last.t
    }
    into += load * course.last.t
    t += course.last.t
    y = course.last.y
    return !boils
  }
  if (start < boiling) while (t < time - 1e-6) {
    if (share > 0 && !phase(Math.min(share * cycle, time - t), heat)) break
    if (share < 1 && t < time - 1e-6 && !phase(Math.min((1 - share) * cycle, time - t), 0)) break
  }
  const stored = metalCapacity * (y[0]! - start) + coolantCapacity * (y[1]! - start)
  return { peak, end: y[1]!, metal: y[0]!, within: Math.min(until, t), lasted: t, open: into > 0 ? (into - out - stored) / into : 0 }
}))
