import radiator from '@trochoid/compute/cooling/radiatorFromRatedPoint.calc.ts'
import { coreAir, heatFlow } from '@trochoid/compute/cooling/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { air: number; heat: number; pumped: number }
type Data = { all: Here[]; here: Here | null; rated: number }

function from(build: Build): Data {
  const { given, at } = asked(radiator, build)
  const of = (air: number): Here | null => {
    const heat = at({ air })?.['heat'], pumped = at({ air, coolant: 1.5 * given('coolant') })?.['heat']
    return heat === undefined || pumped === undefined ? null : { air, heat, pumped }
  }
  const rated = given('ratedAir')
  return { all: each(steps(0.2 * rated, 2 * rated, 12), of), here: of(given('air')), rated }
}

export default figure<Data>({
  title: 'What the radiator casts off, over the air that passes it',
  from,
  summary({ all, here, rated }, system) {
    const q = shown(heatFlow, system), m = shown(coreAir, system), last = all.at(-1)
    if (!here || !last) return 'The rating of this radiator gives no answer, so nothing is drawn.'
    return `Coolant and air come in at the temperatures of this build, the thermostat is open. With ${m.say(here.air)} of air, against ${m.say(rated)} at its rating, it casts off ${q.say(here.heat)}. Half as much coolant again, which is half as much pump again, would make it ${q.say(here.pumped)}. The curve bends because the air leaves ever less warmed: more of it is worth less and less, but the pump’s line lies close to the other all the way.`
  },
  Picture({ data: { all, here, rated }, system }) {
    if (all.length < 2 || !here) return null
    const q = shown(heatFlow, system), m = shown(coreAir, system), over = (of: 'heat' | 'pumped'): Spot[] => all.map((h) => [m.of(h.air), q.of(h[of])])
    return <Curves says="Heat cast off over air flow, with the coolant flow of the build and with half as much again." x={m.head()} y={q.head('Heat')} reach={[0]}
      lines={[{ name: 'Coolant flow of this build', class: 'line', spots: over('heat') }, { name: 'half as much coolant again', class: 'line two', dash: long, spots: over('pumped') }]}
      marks={[{ at: [m.of(here.air), q.of(here.heat)], says: 'this build', to: 'under' }]} uprights={[{ at: m.of(rated), says: 'its rating' }]} />
  },
  table({ all }, system) {
    const q = shown(heatFlow, system), m = shown(coreAir, system)
    return { head: [m.head(), q.head('Heat'), q.head('Heat, more coolant')], rows: all.map((h) => [writeNumber(m.of(h.air)), writeNumber(q.of(h.heat)), writeNumber(q.of(h.pumped))]) }
  },
})
