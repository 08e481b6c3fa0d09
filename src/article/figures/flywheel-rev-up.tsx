import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { inertia, revUpTime } from '@trochoid/compute/driveline/quantities.ts'
import revUp from '@trochoid/compute/driveline/revUpTime.calc.ts'
import { shaftSpeed, torque } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { shown } from './plot/shown.ts'

type Here = { flywheel: number; time: number }
type Data = { all: Here[]; sheet: Here; half: Here; from: number; to: number; torque: number }

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = revUp, given = valuesFor(of, sheet, point)
  const at = (flywheel: number): Here => ({ flywheel, time: of.answer({ ...given, flywheel })['time']! })
  const here = given['flywheel'] as number
  return { all: steps(0, 2 * here, 8).map(at), sheet: at(here), half: at(here / 2), from: given['from'] as number, to: given['to'] as number, torque: given['torque'] as number }
}

export default figure<Data>({
  title: 'Time to rev up with the clutch down, over the flywheel’s inertia',
  from,
  summary({ all, sheet, half, from: low, to, torque: pull }, system) {
    const s = shown(shaftSpeed, system), t = shown(revUpTime, system), j = shown(inertia, system)
    return `From ${s.say(low)} to ${s.say(to)} with ${shown(torque, system).say(pull)}. The flywheel on the sheet, ${j.say(sheet.flywheel)}, takes ${t.say(sheet.time)}; one of half its inertia ${t.say(half.time)}. With none at all it would still be ${t.say(all[0]!.time)}, because shaft, rotors and clutch have to be turned as well.`
  },
  Picture({ data: { all, sheet, half }, system }) {
    const t = shown(revUpTime, system), j = shown(inertia, system)
    const spot = (h: Here): readonly [number, number] => [j.of(h.flywheel), t.of(h.time)]
    return <Curves says="Time to rev up over the flywheel’s inertia: a straight line that does not begin at nothing." x={j.head('Inertia of the flywheel')} y={t.head()} reach={[0]}
      lines={[{ name: 'Time to rev up', class: 'line', spots: all.map(spot) }]} marks={[{ at: spot(sheet), says: 'the sheet', to: 'under' }, { at: spot(half), says: 'half of it', to: 'under' }]} />
  },
  table({ all }, system) {
    const t = shown(revUpTime, system), j = shown(inertia, system)
    return { head: [j.head('Inertia of the flywheel'), t.head()], rows: all.map((h) => [writeNumber(j.of(h.flywheel)), writeNumber(t.of(h.time))]) }
  },
})
