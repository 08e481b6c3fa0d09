import veUnderBackPressure from '@trochoid/compute/engine/veUnderBackPressure.calc.ts'
import { backPressureRatio, overlapFactor, volumetricEfficiency } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { ratio: number; none: number; sheet: number; twice: number }
type Data = { all: Here[]; overlap: number; here: Here | null }

function from(build: Build): Data {
  const { given, at } = asked(veUnderBackPressure, build), overlap = given('overlap')
  // Filling goes with its reference, so the reference is taken that gives this build its own filling at its own ratio.
  const own = build.point['engine.volumetricEfficiency'], usual = at()?.['ve']
  const reference = own === undefined || usual === undefined ? given('reference') : (given('reference') * own) / usual
  const of = (ratio: number): Here | null => {
    const [none, sheet, twice] = [0, overlap, 2 * overlap].map((factor) => at({ reference, ratio, overlap: factor })?.['ve'])
    return none === undefined || sheet === undefined || twice === undefined ? null : { ratio, none, sheet, twice }
  }
  return { all: each(steps(0.8, 2.2, 14), of), overlap, here: of(given('ratio')) }
}

export default figure<Data>({
  title: 'How the engine fills, over the back-pressure ratio',
  from,
  summary({ all, overlap, here }, system) {
    const v = shown(volumetricEfficiency, system), r = shown(backPressureRatio, system), last = all.at(-1)
    if (!here || !last) return 'The back-pressure of this build is not known, so nothing is drawn.'
    return `At this build’s ${r.say(here.ratio)} the engine fills to ${v.say(here.sheet)}. At ${r.say(last.ratio)} it would be ${v.say(last.sheet)}; ${v.say(last.none)} with no overlap at all, where only the gas left in the clearance swells, and ${v.say(last.twice)} with twice the overlap factor. The factor, ${shown(overlapFactor, system).say(overlap)} on the sheet, has no general source: one log at two back-pressures gives yours.`
  },
  Picture({ data: { all, here }, system }) {
    if (all.length < 2) return null
    const v = shown(volumetricEfficiency, system), over = (of: 'none' | 'sheet' | 'twice'): Spot[] => all.map((h) => [h.ratio, v.of(h[of])])
    return <Curves says="Volumetric efficiency over back-pressure ratio for no overlap, the sheet’s and twice that." x="Pressure before the turbine over manifold" y={v.head()}
      lines={[{ name: 'No overlap', class: 'line thin', spots: over('none') }, { name: 'as on the sheet', class: 'line', spots: over('sheet') }, { name: 'twice the overlap', class: 'line two', dash: long, spots: over('twice') }]}
      marks={here ? [{ at: [here.ratio, v.of(here.sheet)], says: 'this build', to: 'above' }] : []} />
  },
  table({ all }, system) {
    const v = shown(volumetricEfficiency, system)
    return { head: ['Back-pressure ratio', v.head('No overlap'), v.head('Sheet'), v.head('Twice')], rows: all.filter((_, i) => i % 2 === 0).map((h) => [writeNumber(h.ratio), ...[h.none, h.sheet, h.twice].map((x) => writeNumber(v.of(x)))]) }
  },
})
