import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { rotorLoad } from '@trochoid/compute/oil/quantities.ts'
import rotorBearingGas from '@trochoid/compute/oil/rotorBearingGas.calc.ts'
import { rotorInertiaLoad } from '@trochoid/compute/oil/rotorInertiaLoad.ts'
import { answered } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly first: number; readonly last: number; readonly left: readonly [number, number]; readonly pull: number }

/** Gas push, the rotor's own pull and what is left between them, over the speeds of the sweep. */
export default lineFigure<Data>({
  title: 'Push of the gas, pull of the rotor, and what is left',
  says: 'Three loads of the rotor bearing over shaft speed.',
  x: shaftSpeed, y: rotorLoad,
  from({ sheet, solved: { points } }) {
    const of: AnyCalculation = rotorBearingGas
    const at = points.filter((p) => p.values['engine.endPressure'] !== undefined && p.values['oil.temperature'] !== undefined)
    const x = at.map((p) => p.speed)
    const given = at.map((p) => valuesFor(of, sheet, p.values))
    const gas = given.map((v) => answered(of, v, 'gas')), left = given.map((v) => answered(of, v, 'left'))
    const pull = x.map((speed, i) => rotorInertiaLoad({ mass: given[i]!['mass'] as number, eccentricity: given[i]!['eccentricity'] as number, speed }))
    if (x.length < 2 || left[0] == null || left.at(-1) == null) return null
    return {
      x, first: x[0]!, last: x.at(-1)!, left: [left[0], left.at(-1)!], pull: pull.at(-1)!,
      lines: [{ name: 'Gas at its peak', y: gas }, { name: 'Inertia', y: pull }, { name: 'Left at the peak', y: left }],
    }
  },
  summary({ first, last, left, pull }, system) {
    const w = shown(rotorLoad, system), n = shown(shaftSpeed, system)
    return `Full throttle. Inertia grows with the square of speed, to ${w.say(pull)} at ${n.say(last)}, and takes that much off the gas force at its peak: ${w.say(left[0])} is left at ${n.say(first)}, ${w.say(left[1])} at ${n.say(last)}. Between peaks inertia stands alone.`
  },
  without: 'The loads of this build could not be worked out, so nothing is drawn.',
})
