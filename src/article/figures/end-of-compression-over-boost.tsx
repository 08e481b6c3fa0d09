import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import endOfCompression from '@trochoid/compute/engine/endOfCompression.calc.ts'
import { compressionRatio, endPressure, endTemperature, manifoldPressure } from '@trochoid/compute/engine/quantities.ts'
import { kPa } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Line = { ratio: number; spots: (readonly [manifold: number, pressure: number])[]; temperature: number }
type Data = { lines: Line[]; manifold: number; pressure: number; ratio: number; same: number }

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = endOfCompression, given = valuesFor(of, sheet, point)
  const at = (over: object): Readonly<Record<string, number>> => of.answer({ ...given, ...over })
  const ratio = given['compressionRatio'] as number, manifold = given['manifold'] as number, pressure = at({})['pressure']!
  const line = (compressionRatio: number): Line => ({
    ratio: compressionRatio, temperature: at({ compressionRatio })['temperature']!,
    spots: steps(kPa(100), Math.max(kPa(280), manifold), 9).map((m) => [m, at({ compressionRatio, manifold: m })['pressure']!] as const),
  })
  // Pressure goes in proportion to the manifold's, so the one that gives this pressure at another ratio follows.
  return { lines: [ratio - 1, ratio, ratio + 1].map(line), manifold, pressure, ratio, same: (manifold * pressure) / at({ compressionRatio: ratio + 1 })['pressure']! }
}

export default figure<Data>({
  title: 'Pressure at the end of compression, before any burning',
  from,
  summary({ lines, manifold, pressure, ratio, same }, system) {
    const p = shown(endPressure, system), m = shown(manifoldPressure, system), t = shown(endTemperature, system), r = shown(compressionRatio, system)
    return `At the sheet’s ${r.say(ratio)} and ${m.say(manifold)} in the manifold compression alone would reach ${p.say(pressure)} and ${t.say(lines[1]!.temperature)}. With ${r.say(ratio + 1)} the same pressure comes at ${m.say(same)} in the manifold, and the charge is ${t.say(lines[2]!.temperature)} hot instead. The charge temperature is held as it is. None of these lines is a knock limit.`
  },
  Picture({ data: { lines, manifold, pressure }, system }) {
    const p = shown(endPressure, system), m = shown(manifoldPressure, system), r = shown(compressionRatio, system)
    const looks = [{ class: 'line thin' }, { class: 'line' }, { class: 'line two', dash: long }] as const
    return <Curves says="Pressure at the end of compression over manifold pressure for three compression ratios." x={m.head()} y={p.head()} reach={[0]}
      lines={lines.map(({ ratio, spots }, i) => ({ name: `Ratio ${r.say(ratio)}`, ...looks[i]!, spots: spots.map(([x, y]): Spot => [m.of(x), p.of(y)]) }))}
      marks={[{ at: [m.of(manifold), p.of(pressure)], says: 'the sheet at full power', to: 'under' }]} />
  },
  table({ lines }, system) {
    const p = shown(endPressure, system), m = shown(manifoldPressure, system), r = shown(compressionRatio, system)
    return { head: [m.head(), ...lines.map(({ ratio }) => p.head(`Ratio ${r.say(ratio)}`))], rows: lines[0]!.spots.map(([x], i) => [writeNumber(m.of(x)), ...lines.map(({ spots }) => writeNumber(p.of(spots[i]![1])))]) }
  },
})
