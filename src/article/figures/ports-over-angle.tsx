import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import portTimeArea from '@trochoid/compute/engine/portTimeArea.calc.ts'
import { portArea, timeArea } from '@trochoid/compute/engine/quantities.ts'
import { deg, mm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { Band, long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'
import { ports } from './rotor/cycle.ts'

type Here = { angle: number; intake: number; exhaust: number }
type Data = { all: Here[]; intake: number; exhaust: number; overlap: number }

/** Shaft angles count from the smallest volume at the ports, where a chamber's exhaust ends and its intake begins. */
const zero = deg(540)
const sizes = { intake: { width: mm(36), height: mm(44) }, exhaust: { width: mm(60), height: mm(28) } } as const

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = portTimeArea, given = valuesFor(of, sheet, point)
  const ask = (port: 'intake' | 'exhaust', angle: number) => {
    const { opens, shuts } = ports[port]
    return of.answer({ ...given, ...sizes[port], open: opens - zero, close: shuts - zero, angle })
  }
  const at = (angle: number): Here => ({ angle, intake: ask('intake', angle)['area']!, exhaust: ask('exhaust', angle)['area']! })
  return { all: steps(deg(-360), deg(330), 138).map(at), intake: ask('intake', 0)['timeArea']!, exhaust: ask('exhaust', 0)['timeArea']!, overlap: ports.exhaust.shuts - ports.intake.opens }
}

export default figure<Data>({
  title: 'Open area of both ports, over shaft angle',
  from,
  summary({ intake, exhaust, overlap }, system) {
    const t = shown(timeArea, system)
    return `An invented intake port and exhaust port of one chamber, at the speed of greatest power. Nothing is the smallest volume between exhaust and intake. Area times time comes to ${t.say(intake)} for the intake and ${t.say(exhaust)} for the exhaust in each charge. For ${Math.round((overlap * 180) / Math.PI)}° both are open: that is overlap. Edges are taken straight and square to the seal’s way; a rounded port opens more softly.`
  },
  Picture({ data: { all }, system }) {
    const a = shown(portArea, system), degrees = (angle: number): number => (angle * 180) / Math.PI
    const over = (of: 'intake' | 'exhaust'): Spot[] => all.map((h) => [degrees(h.angle), a.of(h[of])])
    const both = all.map((h): Spot => [degrees(h.angle), a.of(Math.min(h.intake, h.exhaust))])
    return <Curves says="Open area of exhaust and intake over shaft angle, with the overlap shaded." x="Shaft angle from smallest volume, °" y={a.head()} reach={[0]}
      under={(on) => <Band on={on} low={both.map(([x]) => [x, 0] as const)} high={both} class="fill-accent" />}
      lines={[{ name: 'Exhaust', class: 'line two', dash: long, spots: over('exhaust') }, { name: 'Intake', class: 'line', spots: over('intake') }]}
      uprights={[{ at: 0, says: 'smallest volume', top: true }]} />
  },
  table({ all }, system) {
    const a = shown(portArea, system)
    return { head: ['Shaft angle, °', a.head('Exhaust'), a.head('Intake')], rows: all.filter((_, i) => i % 9 === 0).map((h) => [String(Math.round((h.angle * 180) / Math.PI)), writeNumber(a.of(h.exhaust)), writeNumber(a.of(h.intake))]) }
  },
})
