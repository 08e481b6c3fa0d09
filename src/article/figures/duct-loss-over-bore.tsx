import elbowLoss from '@trochoid/compute/boost/elbowLoss.calc.ts'
import { ductBore, pressureLoss } from '@trochoid/compute/boost/quantities.ts'
import { mm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { bore: number; wide: number; tight: number; straight: number }
type Data = { all: Here[]; bore: number; loss: number | null }

function from(build: Build): Data {
  const { given, at } = asked(elbowLoss, build)
  const loss = (bore: number, over: object): number | undefined => at({ bore, ...over })?.['loss']
  const of = (bore: number): Here | null => {
    const wide = loss(bore, { radius: 1.5 }), tight = loss(bore, { radius: 1 }), straight = loss(bore, { bends: 0 })
    return wide === undefined || tight === undefined || straight === undefined ? null : { bore, wide, tight, straight }
  }
  return { all: each(steps(mm(48), mm(84), 12), of), bore: given('bore'), loss: at()?.['loss'] ?? null }
}

export default figure<Data>({
  title: 'A charge pipe’s loss over its bore, straight and with elbows',
  from,
  summary({ all, bore, loss }, system) {
    const first = all[0], last = all.at(-1)
    if (!first || !last || loss === null) return 'The air of this build is not known, so nothing is drawn.'
    const b = shown(ductBore, system), p = shown(pressureLoss, system)
    return `The build’s air at most power through one pipe of the length and with the elbows of the calculator beneath. At ${b.say(first.bore)} it costs ${p.say(first.wide)}, at ${b.say(bore)} ${p.say(loss)}, at ${b.say(last.bore)} ${p.say(last.wide)}. From the first to the last bore loss falls to one part in ${writeNumber(first.wide / last.wide, 2)}; a tighter bend costs far less than a smaller bore.`
  },
  Picture({ data: { all, bore, loss }, system }) {
    if (all.length < 2) return null
    const b = shown(ductBore, system), p = shown(pressureLoss, system)
    const over = (of: 'wide' | 'tight' | 'straight'): Spot[] => all.map((x) => [b.of(x.bore), p.of(x[of])])
    return <Curves says="Pressure loss of a charge pipe over its bore, for elbows of two radii and without elbows." x={b.head()} y={p.head()} reach={[0]}
      lines={[{ name: 'Elbow radius of one bore', class: 'line two', dash: long, spots: over('tight') }, { name: 'Radius of one and a half', class: 'line', spots: over('wide') }, { name: 'No elbows', class: 'line thin', spots: over('straight') }]}
      marks={loss === null ? [] : [{ at: [b.of(bore), p.of(loss)], says: 'the calculator’s pipe' }]} />
  },
  table({ all }, system) {
    const b = shown(ductBore, system), p = shown(pressureLoss, system)
    return { head: [b.head(), p.head('Radius of one bore'), p.head('One and a half'), p.head('No elbows')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(b.of(x.bore)), ...[x.tight, x.wide, x.straight].map((v) => writeNumber(p.of(v)))]) }
  },
})
