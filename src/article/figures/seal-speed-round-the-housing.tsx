import apexSealSpeed from '@trochoid/compute/engine/apexSealSpeed.calc.ts'
import { apexSealSpeedAt } from '@trochoid/compute/engine/apexSealSpeedAt.ts'
import { apexAngle, sealSpeed, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { deg } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import type { Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Data = { all: { angle: number; speed: number }[]; mean: number; shaft: number }

function from(build: Build): Data {
  const { given, at } = asked(apexSealSpeed, build)
  const housing = { generatingRadius: given('generatingRadius'), eccentricity: given('eccentricity'), shift: given('shift'), speed: given('speed') }
  return { all: steps(0, deg(360), 72).map((angle) => ({ angle, speed: apexSealSpeedAt({ ...housing, angle }) })), mean: at()?.['mean'] ?? NaN, shaft: given('speed') }
}

export default figure<Data>({
  title: 'How fast an apex seal slides, once round the housing',
  from,
  summary({ all, mean, shaft }, system) {
    const v = shown(sealSpeed, system), speeds = all.map(({ speed }) => speed)
    return `At ${shown(shaftSpeed, system).say(shaft)}. Across the long axis the seal slides at ${v.say(Math.max(...speeds))}, at the two waists at ${v.say(Math.min(...speeds))}, on the mean at ${v.say(mean)}. Twice in each round it is slowed and sped up again.`
  },
  Picture({ data: { all, mean }, system }) {
    const v = shown(sealSpeed, system), a = shown(apexAngle, system)
    const spots = all.map(({ angle, speed }): Spot => [a.of(angle), v.of(speed)])
    return <Curves says="Sliding speed of an apex seal over the rotor’s angle, twice high and twice low in a round." x={a.head('Rotor angle from the long axis')} y={v.head()} reach={[0]}
      lines={[{ name: 'Sliding speed', class: 'line', spots }]} levels={Number.isFinite(mean) ? level('Mean', 'line dash', [0, a.of(deg(360))], v.of(mean)) : []}
      uprights={[{ at: a.of(deg(90)), says: 'waist' }, { at: a.of(deg(270)), says: 'waist' }]} />
  },
  table({ all }, system) {
    const v = shown(sealSpeed, system), a = shown(apexAngle, system)
    return { head: [a.head('Rotor angle'), v.head()], rows: all.filter((_, i) => i % 6 === 0).map(({ angle, speed }) => [writeNumber(a.of(angle)), writeNumber(v.of(speed))]) }
  },
})
