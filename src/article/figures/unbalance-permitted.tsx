import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { balancedMass, balanceGrade, permissibleUnbalance as permitted } from '@trochoid/compute/driveline/quantities.ts'
import permissibleUnbalance from '@trochoid/compute/driveline/permissibleUnbalance.calc.ts'
import { engineSpeedLimit } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { rpm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Line = { grade: string; spots: (readonly [speed: number, unbalance: number])[]; here: number | null }
type Data = { mass: number; limit: number | null; lines: Line[] }
const grades = ['G1', 'G2.5', 'G6.3'] as const
const looks = ['line thin', 'line', 'line two'] as const

function from({ sheet }: Build): Data {
  const { given, at: answer } = begins(permissibleUnbalance)
  const limit = valueAt(sheet, engineSpeedLimit)
  const at = (grade: (typeof grades)[number], speed: number): number => answer({ grade, speed })['unbalance']!
  return { mass: given('mass'), limit, lines: grades.map((grade) => ({ grade: balanceGrade.choices[grade], spots: steps(rpm(3000), rpm(10000), 14).map((speed) => [speed, at(grade, speed)] as const), here: limit === null ? null : at(grade, limit) })) }
}

export default figure<Data>({
  title: 'Unbalance that a grade permits, over the highest service speed',
  from,
  summary({ mass, limit, lines }, system) {
    const u = shown(permitted, system), s = shown(shaftSpeed, system)
    const here = limit === null ? '' : ` At this build’s limit of ${s.say(limit)}: ${lines.map(({ grade, here: at }) => `${grade} ${u.say(at!)}`).join(', ')}.`
    return `For a part of ${shown(balancedMass, system).say(mass)}.${here} A grade is a speed, so the gram-millimetres it permits fall as the shaft speed rises: a part balanced for a lower limit has to be done again when the limit is raised. The force of what is left, at one grade, grows in proportion to speed.`
  },
  Picture({ data: { limit, lines }, system }) {
    const u = shown(permitted, system), s = shown(shaftSpeed, system)
    return <Curves says="Permissible unbalance over shaft speed for three balance grades." x={s.head('Highest service speed')} y={u.head('Permissible unbalance')} reach={[0]}
      lines={lines.map(({ grade, spots }, i) => ({ name: grade, class: looks[i]!, ...(i === 2 && { dash: long }), spots: spots.map(([speed, at]) => [s.of(speed), u.of(at)] as const) }))}
      uprights={limit === null ? [] : [{ at: s.of(limit), says: 'the sheet’s limit', top: true }]} />
  },
  table({ lines }, system) {
    const u = shown(permitted, system), s = shown(shaftSpeed, system)
    return { head: [s.head('Highest service speed'), ...lines.map(({ grade }) => u.head(grade))], rows: lines[0]!.spots.flatMap(([speed], i) => (i % 2 === 0 ? [[writeNumber(s.of(speed)), ...lines.map(({ spots }) => writeNumber(u.of(spots[i]![1])))]] : [])) }
  },
})
