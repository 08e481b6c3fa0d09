import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import idlePulse from '@trochoid/compute/fuel/idlePulse.calc.ts'
import injectorSizing from '@trochoid/compute/fuel/injectorSizing.calc.ts'
import { dutyLimit, fuelPerCharge, injectorFlow, pulseWidth } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Data = { fuel: number; smallest: number; largest: number; needed: number; share: number; fitted: number; pulses: { flow: number; pulse: number }[] } | null

function from({ sheet, solved, point }: Build): Data {
  const sizing: AnyCalculation = injectorSizing
  const idle: AnyCalculation = idlePulse
  const fuel = solved.idle.values['fuel.fuelPerCharge'], idleFlow = solved.idle.values['fuel.volumeFlow']
  if (fuel === undefined || idleFlow === undefined || point['engine.power'] === undefined) return null
  const given: Values = { ...valuesFor(sizing, sheet, point), idleFuel: fuel }
  const alone: Values = { ...valuesFor(idle, sheet, point), idleFlow }
  const pulse = (flow: number): number => idle.answer({ ...alone, ratedFlow: flow, number: 1 })['pulse']!
  try {
    const { largest, needed } = sizing.answer(given) as { largest: number; needed: number }
    const fitted = alone['ratedFlow'] as number
    const most = 1.25 * Math.max(largest, needed, fitted)
    const flows = Array.from({ length: 41 }, (_, i) => most * (0.14 + (0.86 * i) / 40))
    return { fuel, smallest: alone['smallest'] as number, largest, needed, share: given['duty'] as number, fitted, pulses: flows.map((flow) => ({ flow, pulse: pulse(flow) })) }
  } catch { return null }
}

export default figure<Data>({
  title: 'One injector per rotor: how large may it be, how large must it be',
  from,
  summary(data, system) {
    if (!data) return 'This build has no idle or no full-throttle point, so nothing is drawn.'
    const q = shown(injectorFlow, system)
    const verdict = data.needed > data.largest ? `One injector cannot do both: ${q.say(data.needed - data.largest)} lie between.` : `On paper one injector between the two would do both, with ${q.say(data.needed)} to ${q.say(data.largest)} to choose from and nothing in reserve at either end.`
    return `At idle a charge takes ${shown(fuelPerCharge, system).say(data.fuel)}. The larger the injector, the shorter the pulse: at ${q.say(data.largest)} it reaches the ${shown(pulseWidth, system).say(data.smallest)} that still repeat. Full load within ${shown(dutyLimit, system).say(data.share)} of the turn asks ${q.say(data.needed)}. ${verdict} Dead time and smallest pulse are those of the primaries; a larger injector usually has longer ones.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const q = shown(injectorFlow, system), t = shown(pulseWidth, system)
    const on = frame({ x: [0, q.of(data.pulses.at(-1)!.flow)], y: [0, t.of(data.pulses[0]!.pulse)] })
    const pulse: Named = { name: 'Pulse at idle', class: 'line', spots: data.pulses.map((p) => [q.of(p.flow), t.of(p.pulse)]) }
    const least: Named = { name: 'Smallest pulse that repeats', class: 'line two', dash: long, spots: [[0, t.of(data.smallest)], [q.of(data.pulses.at(-1)!.flow), t.of(data.smallest)]] }
    const largest = on.x.at(q.of(data.largest)), needed = on.x.at(q.of(data.needed))
    const ends = data.needed > data.largest ? ['end', 'start'] as const : ['start', 'end'] as const
    const aside = (x: number, anchor: 'start' | 'end'): number => (anchor === 'end' ? x - 7 : x + 7)
    const here = data.pulses.reduce((a, p) => (Math.abs(p.flow - data.fitted) < Math.abs(a.flow - data.fitted) ? p : a))
    return (
      <Sheet says="Pulse at idle over the rated flow of one injector, the smallest pulse that repeats, and the flow that full load needs." height={on.height} named={[pulse, least]}>
        {data.needed > data.largest && <rect class="area" x={largest} width={needed - largest} y={on.top} height={on.bottom - on.top} />}
        <Axes on={on} x={q.head('Rated flow of one injector')} y={t.head('Pulse at idle')} />
        <line class="thin" x1={largest} x2={largest} y1={on.top} y2={on.bottom} />
        <line class="thin" x1={needed} x2={needed} y1={on.top} y2={on.bottom} />
        <Lines on={on} of={[pulse, least]} />
        <circle class="mark" cx={on.x.at(q.of(data.fitted))} cy={on.y.at(t.of(here.pulse))} r="6" />
        <Words x={aside(largest, ends[0])} y={on.top + 20} anchor={ends[0]}>idles up to here</Words>
        <Words x={aside(needed, ends[1])} y={on.top + 46} anchor={ends[1]}>full load</Words>
        <Words x={on.x.at(q.of(data.fitted)) + 10} y={on.y.at(t.of(here.pulse)) - 8}>primary fitted</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const q = shown(injectorFlow, system), t = shown(pulseWidth, system)
    return {
      head: [q.head('Rated flow'), t.head('Pulse at idle'), t.head('Over the smallest')],
      rows: (data?.pulses ?? []).filter((_, i) => i % 4 === 0).map((p) => [writeNumber(q.of(p.flow)), writeNumber(t.of(p.pulse)), writeNumber(t.of(p.pulse - data!.smallest))]),
    }
  },
})
