import apexSealPath from '@trochoid/compute/engine/apexSealPath.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'

type Data = { gears: { name: string; over: number }[] }
const names = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const

function from(build: Build): Data {
  const { given, at } = asked(apexSealPath, build)
  return { gears: names.flatMap((gear) => {
    if (!(given(gear) > 0)) return []
    const over = at({ gear })?.['over']
    return over === undefined ? [] : [{ name: `${gear[0]!.toUpperCase()}${gear.slice(1)} gear`, over }]
  }) }
}

const metres = (over: number): string => `${writeNumber(1000 * over)}\u202fm`

export default figure<Data>({
  title: 'How far an apex seal slides while the car drives 1,000 metres',
  from,
  summary({ gears }) {
    const first = gears[0], last = gears.at(-1)
    if (!first || !last) return 'The gears of this build are not known, so nothing is drawn.'
    return `${first.name}: ${metres(first.over)}. ${last.name}: ${metres(last.over)}. The same road costs ${writeNumber(first.over / last.over, 2)} times the path in the lowest gear.`
  },
  Picture({ data: { gears } }) {
    return <Bars says="Distance an apex seal slides in each gear while the car drives a thousand metres." rows={gears.map(({ name, over }) => ({ name, says: metres(over), parts: [{ of: over, class: 'fill' }] }))} />
  },
  table({ gears }) {
    return { head: ['Gear', 'Metres slid for 1,000 driven'], rows: gears.map(({ name, over }) => [name, writeNumber(1000 * over)]) }
  },
})
