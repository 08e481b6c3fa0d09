import coolingAir from '@trochoid/compute/cooling/coolingAir.calc.ts'
import { dropAtFlow } from '@trochoid/compute/cooling/dropAtFlow.ts'
import { fanPressure } from '@trochoid/compute/cooling/fanPressure.ts'
import { carSpeedOf, coreAir, coreDropOf } from '@trochoid/compute/cooling/quantities.ts'
import { ratingAirDensity } from '@trochoid/compute/cooling/ratingAirDensity.ts'
import { stackDrop } from '@trochoid/compute/cooling/stackDrop.ts'
import { gasDensity } from '@trochoid/compute/engine/gasDensity.ts'
import { kmh } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Named } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Line = { speed: number; air: number; pressure: number; spots: (readonly [air: number, pressure: number])[] }
type Data = { core: (readonly [air: number, pressure: number])[]; radiator: (readonly [air: number, pressure: number])[]; lines: Line[] }
const looks = [{ class: 'line two', dash: '3 4' }, { class: 'line two', dash: long }, { class: 'line two', dash: undefined }] as const

function from(build: Build): Data {
  const { given, at } = asked(coolingAir, build)
  const density = gasDensity({ pressure: given('pressure'), temperature: given('temperature') }), ratedDensity = ratingAirDensity({ temperature: given('ratedAirTemperature') })
  const lost = (rated: number) => (air: number) => [air, dropAtFlow({ rated, air, ratedAir: given('ratedAir'), exponent: given('exponent'), density, ratedDensity })] as const
  const stack = lost(stackDrop({ radiator: given('coreDrop'), front: given('frontDrop'), coverage: given('coverage') }))
  const lines = [0, kmh(60), kmh(120)].flatMap((carSpeed): Line[] => {
    const x = at({ carSpeed })
    if (!x) return []
    const given0 = { shutOff: given('shutOff'), freeFlow: given('freeFlow') }
    return [{ speed: carSpeed, air: x['air']!, pressure: stack(x['air']!)[1], spots: steps(0, 1.25 * x['air']!, 20).map((air) => [air, x['ram']! + fanPressure({ flow: air / density, ...given0 })] as const) }]
  })
  const most = 1.25 * Math.max(0.1, ...lines.map(({ air }) => air))
  return { core: steps(0.001, most, 24).map(stack), radiator: steps(0.001, most, 24).map(lost(given('coreDrop'))), lines }
}

export default figure<Data>({
  title: 'What the stack of cores asks, and what ram and fan offer',
  from,
  summary({ lines }, system) {
    const v = shown(carSpeedOf, system), m = shown(coreAir, system)
    return `Where a line of what is offered crosses what the stack asks, the air settles: ${lines.map((l) => `${m.say(l.air)} at ${v.say(l.speed)}`).join(', ')}. At a standstill the fan alone stands behind it; at speed the car pushes and the fan hardly counts. Below the heavy line, thin, what the radiator alone would ask: the distance is the price of the charge cooler in front.`
  },
  Picture({ data: { core, radiator, lines }, system }) {
    const v = shown(carSpeedOf, system), m = shown(coreAir, system), p = shown(coreDropOf, system)
    const spots = (of: readonly (readonly [number, number])[]) => of.map(([x, y]) => [m.of(x), p.of(y)] as const)
    const asks: Named[] = [{ name: 'The stack asks', class: 'line', spots: spots(core) }, { name: 'the radiator alone', class: 'thin', spots: spots(radiator) }]
    return <Curves says="Pressure over air flow: what the cores ask, and what ram and fan offer at three car speeds, crossing where the air settles." x={m.head()} y={p.head('Pressure')} reach={[0]}
      lines={[...asks, ...lines.map((l, i): Named => ({ name: `offered at ${v.say(l.speed)}`, ...looks[i]!, spots: spots(l.spots) }))]}
      marks={lines.map((l) => ({ at: [m.of(l.air), p.of(l.pressure)] as const }))} />
  },
  table({ lines }, system) {
    const v = shown(carSpeedOf, system), m = shown(coreAir, system), p = shown(coreDropOf, system)
    return { head: [v.head(), m.head('Air that settles'), p.head('Pressure across the stack')], rows: lines.map((l) => [writeNumber(v.of(l.speed)), writeNumber(m.of(l.air)), writeNumber(p.of(l.pressure))]) }
  },
})
