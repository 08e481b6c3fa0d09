import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { turboMechanicalEfficiency } from '@trochoid/compute/boost/fields.ts'
import { chargeEnthalpy } from '@trochoid/compute/cooling/chargeEnthalpy.ts'
import { heatFlow, shareOfFuelOf } from '@trochoid/compute/cooling/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { type System } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Ribbon } from './plot/Ribbon.tsx'
import { Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Data = { speed: number; fuel: number; charge: number; outside: number; back: number; exhaust: number; ends: { name: string; heat: number }[] } | null

function from({ sheet, point }: Build): Data {
  const value = (path: string): number => point[path] ?? NaN
  const efficiency = valueAt(sheet, turboMechanicalEfficiency) ?? NaN
  const charge = chargeEnthalpy({ flow: value('engine.airFlow'), temperature: value('engine.chargeTemperature') })
  const compressor = value('boost.compressorPower'), cooler = value('cooling.chargeCoolerHeat'), exhaust = value('cooling.exhaustHeat')
  const data = {
    speed: value('engine.speed'), fuel: value('cooling.fuelPower'), charge, outside: charge - (compressor - cooler), back: compressor - cooler, exhaust,
    ends: [
      { name: 'Shaft', heat: value('engine.power') },
      { name: 'Coolant', heat: value('cooling.coolantHeat') },
      { name: 'Oil', heat: value('cooling.oilHeat') },
      { name: 'Surfaces', heat: value('cooling.surfaceHeat') },
      { name: 'Unburned', heat: value('cooling.unburnedHeat') },
      { name: 'Tailpipe, as heat', heat: exhaust - compressor / efficiency },
      { name: 'Charge cooler', heat: cooler },
      { name: 'Turbo bearings', heat: compressor / efficiency - compressor },
    ],
  }
  return [data.speed, data.fuel, charge, compressor, ...data.ends.map(({ heat }) => heat)].every(Number.isFinite) ? data : null
}

/** How many of the ends leave the engine straight; the others have been through the exhaust port. */
const straight = 5
const split = 150, turbo = 322, end = 392
/** The block stands so low that no flow has to cross another. */
const top = 62, slot = 47, gap = 7, tall = 220, block = top + 152

/** Places of the ends on the right, and of the block they part from. */
function places({ ends }: NonNullable<Data>) {
  const sum = ends.reduce((all, e) => all + e.heat, 0)
  const thick = (heat: number): number => (Math.max(0, heat) / sum) * tall
  let right = top, left = block
  const rows = ends.map((e) => {
    const w = thick(e.heat), room = Math.max(slot, w)
    const row = { ...e, w, right: right + (room - w) / 2, left }
    right += room + gap
    left += w
    return row
  })
  return { rows, thick, bottom: right - gap, port: rows[straight]!.left }
}

const told = (data: NonNullable<Data>, system: System) => {
  const h = shown(heatFlow, system), y = shown(shareOfFuelOf, system)
  return { h, share: (heat: number): string => y.say(heat / data.fuel, 2) }
}

export default figure<Data>({
  title: 'The energy of the fuel, followed to where it ends',
  from,
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, so nothing is drawn.'
    const { h } = told(data, system)
    return `At ${shown(shaftSpeed, system).say(data.speed)}, the point of most power, each band as wide as its power. The exhaust port passes ${h.say(data.exhaust)} as heat; that is the remainder of the inner balance. The turbocharger takes its drive from it and gives it to the charge: most of that leaves by the charge cooler, and ${h.say(data.back)} go back into the engine.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const { h, share } = told(data, system)
    const { rows, thick, bottom, port } = places(data)
    const height = bottom + 44, loop = bottom + 18, through = thick(data.exhaust), back = Math.max(1.6, thick(data.back))
    return (
      <Sheet says="Flow drawing of the fuel’s energy: shaft, coolant, oil, surfaces, unburned, and the exhaust with the turbocharger’s loop." height={height}>
        <rect class="thin" stroke-dasharray="2 4" x="52" width="318" y={top - 32} height={height - top + 28} />
        <rect class="thin" stroke-dasharray="6 4" x="104" width="150" y={block - 22} height={tall + 44} />
        <rect class="area" x="0" width={split} y={block} height={tall} />
        {rows.slice(0, straight).map((r, i) => <Ribbon key={r.name} from={[split, r.left]} to={[end, r.right]} thick={r.w} {...(i === 0 && { class: 'fill-accent' })} />)}
        <Ribbon from={[split, port]} to={[turbo, port]} thick={through} />
        {rows.slice(straight).map((r) => <Ribbon key={r.name} from={[turbo, r.left]} to={[end, r.right]} thick={r.w} />)}
        <path class="fill-accent" d={`M${turbo} ${port + through - back}v${loop - port - through + 2 * back}H${72}V${block + tall + 8}h${back}V${loop}H${turbo - back}V${port + through - back}z`} />
        <path class="fill-accent" d={`M${72 + back / 2} ${block + tall - 1}l-6 10h12z`} />
        <line class="axis" x1={turbo} x2={turbo} y1={port - 4} y2={port + through + 4} />
        <Words x={58} y={top - 14}>whole car</Words>
        <Words x={104} y={block - 30}>port to port</Words>
        <Words x={8} y={block + 96} strong>Fuel</Words>
        <Words x={8} y={block + 120}>{h.say(data.fuel)}</Words>
        <Words x={turbo - 8} y={port + through / 2 - 6} anchor="end" strong>Exhaust port</Words>
        <Words x={turbo - 8} y={port + through / 2 + 17} anchor="end">{h.say(data.exhaust)}</Words>
        <Words x={84} y={loop - 9}>back with the charge</Words>
        {rows.map((r) => <g key={r.name}>
          <Words x={end + 10} y={r.right + r.w / 2 - 4} strong>{r.name}</Words>
          <Words x={end + 10} y={r.right + r.w / 2 + 19}>{`${h.say(r.heat)}, ${share(r.heat)}`}</Words>
        </g>)}
      </Sheet>
    )
  },
  table(data, system) {
    if (!data) return { head: ['Way', 'Heat', 'Share of fuel'], rows: [] }
    const { h, share } = told(data, system)
    const row = (name: string, heat: number): string[] => [name, h.say(heat), share(heat)]
    return {
      head: ['Way', 'Power', 'Share of the fuel’s'],
      rows: [row('In: fuel', data.fuel), row('In: warmth of the outside air above 25 °C', data.outside), ...data.ends.map((e) => row(`Out: ${e.name.toLowerCase()}`, e.heat)),
        row('Within: exhaust port, the remainder', data.exhaust), row('Within: back with the charge', data.back)],
    }
  },
})
