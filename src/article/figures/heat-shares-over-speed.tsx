import { shareOfFuelOf } from '@trochoid/compute/cooling/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { scale } from '../../islands/chart/scale.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Band, Lines, type Spot } from './plot/Lines.tsx'
import { apart } from './plot/apart.ts'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

const parts = [
  ['Shaft', 'engine.power'], ['Coolant', 'cooling.coolantHeat'], ['Oil', 'cooling.oilHeat'], ['Surfaces', 'cooling.surfaceHeat'], ['Exhaust, heat', 'cooling.exhaustHeat'], ['Unburned', 'cooling.unburnedHeat'],
] as const
type Here = { speed: number; shares: number[] }
type Data = { all: Here[] }

function from({ solved }: Build): Data {
  // Every other speed: the shares run smoothly.
  return { all: solved.points.filter((_, i, all) => (all.length - 1 - i) % 2 === 0).flatMap(({ speed, values }): Here[] => {
    const fuel = values['cooling.fuelPower']
    const shares = parts.map(([, path]) => (values[path] ?? NaN) / (fuel ?? NaN))
    return shares.every(Number.isFinite) ? [{ speed, shares }] : []
  }) }
}

export default figure<Data>({
  title: 'Shares of the fuel’s energy over shaft speed, full throttle',
  from,
  summary({ all }, system) {
    const first = all[0], last = all.at(-1)
    if (!first || !last) return 'This build has no full-throttle points, so nothing is drawn.'
    const s = shown(shaftSpeed, system), y = shown(shareOfFuelOf, system)
    const of = (name: string, { shares }: Here): string => y.say(shares[parts.findIndex(([n]) => n === name)]!, 2)
    return `From ${s.say(first.speed)} to ${s.say(last.speed)} the shaft’s share goes from ${of('Shaft', first)} to ${of('Shaft', last)}. The mixture is set by manifold pressure, so what stays unburned goes from ${of('Unburned', first)} to ${of('Unburned', last)}. The stack differs from 100 % by the warmth that the charge brings in. Coolant, oil and surfaces are set shares of the heat released, the same at every speed: that is an assumption.`
  },
  Picture({ data: { all }, system }) {
    if (all.length < 2) return null
    const s = shown(shaftSpeed, system)
    const x = [s.of(all[0]!.speed), s.of(all.at(-1)!.speed)] as const
    const on = { ...frame({ x, y: [0, 100] }), right: 470, x: scale(x, [66, 470], 4) }
    // Upper edge of each share, the ones below it added up.
    const edges = all.map(({ shares }) => shares.reduce<number[]>((sum, share) => [...sum, sum.at(-1)! + 100 * share], [0]))
    const edge = (i: number): Spot[] => all.map(({ speed }, at) => [s.of(speed), edges[at]![i]!])
    const middles = parts.map((_, i) => on.y.at((edges.at(-1)![i]! + edges.at(-1)![i + 1]!) / 2) + 5)
    return (
      <Sheet says="Stacked shares of the fuel’s energy over shaft speed." height={on.height}>
        <g opacity=".45"><Band on={on} low={edge(0)} high={edge(1)} class="fill-accent" /></g>
        {[2, 4].map((i) => <Band key={i} on={on} low={edge(i)} high={edge(i + 1)} />)}
        <Axes on={on} x={s.head()} y="% of the fuel’s energy" />
        <Lines on={on} of={parts.map(([name], i) => ({ name, class: i === 0 ? 'line two' : 'line', spots: edge(i + 1) }))} />
        {apart(middles, 25).map((y, i) => <Words key={parts[i]![0]} x={on.right + 10} y={y} strong={i === 0}>{parts[i]![0]}</Words>)}
      </Sheet>
    )
  },
  table({ all }, system) {
    const s = shown(shaftSpeed, system)
    return { head: [s.head(), ...parts.map(([name]) => `${name}, %`)], rows: all.filter((_, i) => i % 3 === 2).map((h) => [writeNumber(s.of(h.speed)), ...h.shares.map((v) => writeNumber(100 * v))]) }
  },
})
