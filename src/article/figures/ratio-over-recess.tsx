import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { NoAnswer, type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import fromRecess from '@trochoid/compute/engine/compressionRatioFromRecess.calc.ts'
import recessFor from '@trochoid/compute/engine/recessForCompressionRatio.calc.ts'
import { compressionRatio, flankGap, recessVolume } from '@trochoid/compute/engine/quantities.ts'
import { cm3, mm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { recess: number; ratio: number; wider: number }
type Data = { all: Here[]; recess: number; ratio: number; gap: number; more: number } | null
const opened = mm(0.1)

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = fromRecess, asked: AnyCalculation = recessFor
  const given = valuesFor(of, sheet, point), gap = given['gap'] as number
  try {
    const wanted = valuesFor(asked, sheet, point), ratio = wanted['ratio'] as number, recess = asked.answer(wanted)['recess']!
    const at = (volume: number): Here => ({ recess: volume, ratio: of.answer({ ...given, recess: volume })['ratio']!, wider: of.answer({ ...given, recess: volume, gap: gap + opened })['ratio']! })
    return { all: steps(Math.max(cm3(5), recess - cm3(25)), recess + cm3(35), 12).map(at), recess, ratio, gap, more: at(recess + cm3(1)).ratio }
  } catch (error) {
    if (error instanceof NoAnswer) return null
    throw error
  }
}

export default figure<Data>({
  title: 'Compression ratio over the volume of the recess',
  from,
  summary(data, system) {
    if (!data) return 'The geometry of this engine gives no recess for its ratio, so nothing is drawn.'
    const v = shown(recessVolume, system), r = shown(compressionRatio, system), g = shown(flankGap, system)
    return `For ${r.say(data.ratio)} each flank of this engine needs a recess of ${v.say(data.recess)}. A cubic centimetre more makes it ${r.say(data.more)}. The dashed line has a flank gap of ${g.say(data.gap + opened)} where the sheet has ${g.say(data.gap)}: a tenth of a millimetre over the whole flank counts as much as a good part of a recess.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const v = shown(recessVolume, system), r = shown(compressionRatio, system), over = (of: 'ratio' | 'wider'): Spot[] => data.all.map((h) => [v.of(h.recess), r.of(h[of])])
    return <Curves says="Compression ratio falling as the recess grows, for two flank gaps." x={v.head()} y={r.head()}
      lines={[{ name: 'Flank gap of the sheet', class: 'line', spots: over('ratio') }, { name: 'a tenth of a millimetre wider', class: 'line two', dash: long, spots: over('wider') }]}
      marks={[{ at: [v.of(data.recess), r.of(data.ratio)], says: 'the sheet', to: 'right' }]} />
  },
  table(data, system) {
    const v = shown(recessVolume, system), r = shown(compressionRatio, system)
    return { head: [v.head(), r.head('Ratio'), r.head('Ratio, wider gap')], rows: (data?.all ?? []).map((h) => [writeNumber(v.of(h.recess)), writeNumber(r.of(h.ratio)), writeNumber(r.of(h.wider))]) }
  },
})
