import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { fuelVolumeFlow, linePressureLoss, railPressure } from '@trochoid/compute/fuel/quantities.ts'
import railNetwork from '@trochoid/compute/fuel/railNetwork.calc.ts'
import { figure, type Build } from './figure.ts'
import { Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Layout = { says: string; pressures: readonly [number, number, number, number]; gap: number; primary: number; secondary: number; returned: number }
type Data = { series: Layout; parallel: Layout } | null

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = railNetwork
  if (point['fuel.pumpFlow'] === undefined || point['engine.power'] === undefined) return null
  const given = { ...valuesFor(of, sheet, point), place: 'after' }
  const one = (layout: string, says: string): Layout => {
    const out = of.answer({ ...given, layout })
    return { says, pressures: [out['firstPrimary']!, out['lastPrimary']!, out['firstSecondary']!, out['lastSecondary']!], gap: out['gap']!, primary: out['primaryBranch']!, secondary: out['secondaryBranch']!, returned: out['returned']! }
  }
  try { return { series: one('series', 'In series'), parallel: one('parallel', 'In parallel') } } catch { return null }
}

/** One rail with two injectors, its pressures above. */
function Rail({ y, name, at }: { y: number; name: string; at: readonly [string, string] }) {
  return (
    <g>
      <rect class="area" x="170" y={y} width="300" height="22" rx="4" />
      <Words x={320} y={y + 64} anchor="middle">{name}</Words>
      {[230, 410].map((x, i) => <g key={x}><path class="line" d={`M${x} ${y + 22}v18m-6 0h12l-6 12z`} /><Words x={x} y={y - 10} anchor="middle" strong>{at[i]}</Words></g>)}
    </g>
  )
}

export default figure<Data>({
  title: 'The same two rails in series and in parallel, pressures at the injectors',
  from,
  summary(data, system) {
    if (!data) return 'The rails of this build could not be worked out, so nothing is drawn.'
    const d = shown(linePressureLoss, system), q = shown(fuelVolumeFlow, system)
    return `Steady flow at the point of greatest power, regulator after the rails. In series ${q.say(data.series.primary)} run through the primary rail and ${q.say(data.series.secondary)} on through the secondary; no two injectors differ by more than ${d.say(data.series.gap)}. In parallel ${q.say(data.parallel.primary)} and ${q.say(data.parallel.secondary)} run side by side, and the widest difference is ${d.say(data.parallel.gap)}. ${q.say(data.series.returned)} go back in both.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const p = shown(railPressure, system)
    const said = (v: number): string => p.say(v).replace(/ gauge$/, '')
    const of = ({ pressures: [a, b, c, d] }: Layout) => ({ primary: [said(a), said(b)] as const, secondary: [said(c), said(d)] as const })
    const s = of(data.series), l = of(data.parallel)
    const pipe = (d: string) => <path class="line two" d={d} />
    return (
      <Sheet says="Two rails drawn in series and in parallel with the pressure at each injector." height={640}>
        <Words x={0} y={18} strong>In series</Words>
        <Rail y={66} name="Primaries" at={s.primary} /><Rail y={206} name="Secondaries" at={s.secondary} />
        {pipe('M40 77H170')}{pipe('M470 77H560V160H100V217H170')}{pipe('M470 217H600')}
        <Words x={40} y={66}>pump</Words><Words x={640} y={206} anchor="end">regulator</Words>
        <Words x={0} y={338} strong>In parallel</Words>
        <Rail y={386} name="Primaries" at={l.primary} /><Rail y={526} name="Secondaries" at={l.secondary} />
        {pipe('M40 467H120V397H170M120 467V537H170')}{pipe('M470 397H520V467H600M520 467V537H470')}
        <Words x={40} y={456}>pump</Words><Words x={640} y={456} anchor="end">regulator</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const p = shown(railPressure, system), d = shown(linePressureLoss, system)
    return {
      head: ['Layout', 'First primary', 'Last primary', 'First secondary', 'Last secondary', 'Widest difference'],
      rows: data ? [data.series, data.parallel].map((x) => [x.says, ...x.pressures.map((v) => p.say(v, 4)), d.say(x.gap)]) : [],
    }
  },
})
