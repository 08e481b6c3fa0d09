import turbineBalance from '@trochoid/compute/boost/turbineBalance.calc.ts'
import { turbineCapacity, turbineEfficiencyBandOf } from '@trochoid/compute/boost/fields.ts'
import { flowCapacity, turbineEfficiency } from '@trochoid/compute/boost/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { backPressureRatio } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { Band, long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { efficiency: number; sheet: number; larger: number }
type Data = { all: Here[]; here: Here | null; band: number; capacity: number | null }

function from(build: Build): Data {
  const { given, at } = asked(turbineBalance, build)
  const of = (efficiency: number): Here | null => {
    const sheet = at({ efficiency })?.['ratio'], larger = at({ efficiency, each: 1.25 * given('each') })?.['ratio']
    return sheet === undefined || larger === undefined ? null : { efficiency, sheet, larger }
  }
  return { all: each(steps(0.45, 0.75, 15), of), here: of(given('efficiency')), band: valueAt(build.sheet, turbineEfficiencyBandOf) ?? 0, capacity: valueAt(build.sheet, turbineCapacity) }
}

export default figure<Data>({
  title: 'Back-pressure over the efficiency of the turbine',
  from,
  summary({ here, band, capacity }, system) {
    if (!here) return 'The turbine of this build has no balance at full power, so nothing is drawn.'
    const e = shown(turbineEfficiency, system), r = shown(backPressureRatio, system)
    return `At full power and the boost of this build. With ${e.say(here.efficiency)} the turbine asks ${r.say(here.sheet)} times the manifold’s pressure; a turbine of a quarter more flow capacity${capacity === null ? '' : ` than ${shown(flowCapacity, system).say(capacity)}`} asks ${r.say(here.larger)}. Shaded is how far the efficiency is known, ${writeNumber(e.of(band), 2)} points either way. The larger turbine needs more of the exhaust for the same work; below a certain speed it does not get it.`
  },
  Picture({ data: { all, here, band }, system }) {
    if (all.length < 2) return null
    const e = shown(turbineEfficiency, system), over = (of: 'sheet' | 'larger'): Spot[] => all.map((h) => [e.of(h.efficiency), h[of]])
    const known = here ? all.filter((h) => Math.abs(h.efficiency - here.efficiency) <= band + 1e-9) : []
    return <Curves says="Back-pressure ratio over turbine efficiency for the turbine fitted and a larger one." x={e.head()} y="Before the turbine over manifold"
      under={(on) => known.length > 1 && <Band on={on} low={known.map((h) => [e.of(h.efficiency), h.larger] as const)} high={known.map((h) => [e.of(h.efficiency), h.sheet] as const)} />}
      lines={[{ name: 'Turbine fitted', class: 'line', spots: over('sheet') }, { name: 'a quarter more capacity', class: 'line two', dash: long, spots: over('larger') }]}
      marks={here ? [{ at: [e.of(here.efficiency), here.sheet], says: 'this build', to: 'right' }] : []} />
  },
  table({ all }, system) {
    const e = shown(turbineEfficiency, system)
    return { head: [e.head(), 'Turbine fitted', 'A quarter more capacity'], rows: all.filter((_, i) => i % 3 === 0).map((h) => [writeNumber(e.of(h.efficiency), 2), writeNumber(h.sheet), writeNumber(h.larger)]) }
  },
})
