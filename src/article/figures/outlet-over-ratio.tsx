import compressorOutlet from '@trochoid/compute/boost/compressorOutlet.calc.ts'
import { compressorEfficiency, gasTemperature } from '@trochoid/compute/boost/quantities.ts'
import { pressureRatio } from '@trochoid/compute/boost/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Line = { efficiency: number; spots: (readonly [ratio: number, temperature: number])[] }
type Data = { lines: Line[]; here: readonly [ratio: number, temperature: number] | null; efficiency: number; from: number }

function from(build: Build): Data {
  const { given, at } = asked(compressorOutlet, build), inlet = given('inlet')
  const now = at()
  return {
    efficiency: given('efficiency'), from: given('inletTemperature'), here: now && [now['ratio']!, now['outletTemperature']!],
    lines: [0.6, 0.7, 0.8].map((efficiency) => ({ efficiency, spots: steps(1, 3.2, 11).flatMap((ratio) => { const x = at({ outlet: ratio * inlet, efficiency }); return x ? [[ratio, x['outletTemperature']!] as const] : [] }) })),
  }
}

export default figure<Data>({
  title: 'How hot the air leaves, over pressure ratio',
  from,
  summary({ lines, here, efficiency, from: cold }, system) {
    const t = shown(gasTemperature, system), e = shown(compressorEfficiency, system)
    const at = here ? ` This build at full power: a ratio of ${writeNumber(here[0])} at ${e.say(efficiency)}, ${t.say(here[1])}.` : ''
    return `From air at ${t.say(cold)}. At the highest ratio drawn a wheel of ${e.say(lines[0]!.efficiency, 2)} sends out ${t.say(lines[0]!.spots.at(-1)![1])}, one of ${e.say(lines[2]!.efficiency, 2)} ${t.say(lines[2]!.spots.at(-1)![1])}.${at} What an inefficient point adds comes twice: as heat for the charge cooler and as power that the turbine must find.`
  },
  Picture({ data: { lines, here }, system }) {
    const t = shown(gasTemperature, system), e = shown(compressorEfficiency, system)
    const looks = [{ class: 'line two', dash: long }, { class: 'line' }, { class: 'line thin' }] as const
    return <Curves says="Air temperature after the compressor over pressure ratio for three efficiencies." x={pressureRatio.name} y={t.head('After the compressor')}
      lines={lines.map(({ efficiency, spots }, i) => ({ name: `efficiency ${e.say(efficiency, 2)}`, ...looks[i]!, spots: spots.map(([x, y]): Spot => [x, t.of(y)]) }))}
      marks={here ? [{ at: [here[0], t.of(here[1])], says: 'this build', to: 'under' }] : []} />
  },
  table({ lines }, system) {
    const t = shown(gasTemperature, system), e = shown(compressorEfficiency, system)
    return { head: ['Pressure ratio', ...lines.map((l) => t.head(`Efficiency ${e.say(l.efficiency, 2)}`))], rows: lines[0]!.spots.map(([x], i) => [writeNumber(x), ...lines.map((l) => writeNumber(t.of(l.spots[i]![1])))]) }
  },
})
