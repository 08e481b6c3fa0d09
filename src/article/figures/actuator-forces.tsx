import actuatorPressures from '@trochoid/compute/boost/actuatorPressures.calc.ts'
import { actuatorPressure, rodForce } from '@trochoid/compute/boost/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Data = { spring: number; exhaust: number; boost: number; cracking: number } | null

function from(build: Build): Data {
  const { given, at } = asked(actuatorPressures, build), x = at()
  return x && { spring: given('preload'), exhaust: x['exhaustForce']!, boost: x['cracking']! * given('diaphragmArea'), cracking: x['cracking']! }
}

export default figure<Data>({
  title: 'The forces on the rod at the moment the valve lifts',
  from,
  summary(data, system) {
    if (!data) return 'The actuator of this build is not known, so nothing is drawn.'
    const f = shown(rodForce, system), p = shown(actuatorPressure, system)
    return data.cracking > 0
      ? `The spring holds the valve shut with ${f.say(data.spring)}. Exhaust pushes it open with ${f.say(data.exhaust)}, as felt at the rod. Boost on the diaphragm has to bring the rest, ${f.say(data.boost)}, which it does at ${p.say(data.cracking)}. Without the exhaust it would have to bring all of it: that is what a bench test measures.`
      : `The spring holds the valve shut with ${f.say(data.spring)}, and exhaust pushes with ${f.say(data.exhaust)}: more than the spring has, so the valve is lifted without any boost on the diaphragm.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const f = shown(rodForce, system), most = Math.max(data.spring, data.exhaust, Math.abs(data.boost))
    const long = (force: number): number => 24 + (110 * Math.abs(force)) / most
    const arrow = (x: number, y: number, length: number): string => `M${x} ${y}h${length}m${length < 0 ? 10 : -10} -7l${length < 0 ? -10 : 10} 7l${length < 0 ? 10 : -10} 7`
    return (
      <Sheet says="Actuator can with spring and diaphragm, rod and valve, with the three forces as arrows." height={300}>
        <path class="line" d="M90 70h130v120H90zM155 70v120" />
        <path class="thin" d="M96 130l8 -26l10 52l10 -52l10 52l10 -52l8 26" />
        <path class="line" stroke-width="3" d="M155 130H470" />
        <path class="line" d="M470 96v68M470 80v-26M470 180v26M500 54V206" />
        <Words x={100} y={60}>spring</Words>
        <Words x={162} y={60}>boost</Words>
        <Words x={362} y={60} anchor="end">rod</Words>
        <Words x={516} y={60}>exhaust</Words>
        <path class="line" stroke-width="3" d={arrow(155, 235, -long(data.spring))} />
        <path class="line two" stroke-width="3" d={arrow(155, 262, long(data.boost))} />
        <path class="line two" stroke-width="3" d={arrow(470, 235, long(data.exhaust))} />
        <Words x={155 - long(data.spring)} y={222}>{`spring ${f.say(data.spring)}`}</Words>
        <Words x={155} y={288}>{`boost ${f.say(data.boost)}`}</Words>
        <Words x={470} y={258}>{`exhaust ${f.say(data.exhaust)}`}</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const f = shown(rodForce, system)
    return { head: ['Force on the rod', f.head('Size'), 'Way'], rows: data ? [['Spring', writeNumber(f.of(data.spring)), 'shuts'], ['Exhaust on the valve', writeNumber(f.of(data.exhaust)), 'opens'], ['Boost on the diaphragm', writeNumber(f.of(data.boost)), 'opens']] : [] }
  },
})
