import { at as engine } from '@trochoid/compute/engine/point.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { at as fuel } from '@trochoid/compute/fuel/point.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Row = { value: 'filling' | 'duty' | 'pressure'; mixed: string; by: number }
type Data = { speed: number; filling: number; duty: number; pressure: number } | null

const rows: readonly Row[] = [
  { value: 'filling', mixed: 'the figure of two turns, air counted for each turn', by: 1 / 2 },
  { value: 'filling', mixed: 'the figure of one turn in a four-stroke tool', by: 2 },
  { value: 'duty', mixed: 'pulse over the time of two turns', by: 1 / 2 },
  { value: 'pressure', mixed: 'the figure of one turn in a four-stroke formula', by: 2 },
]
const shape = { filling: engine.ve.shape, duty: fuel.worstDuty.shape, pressure: engine.meanPressure.shape }
const named = { filling: 'Volumetric efficiency', duty: 'Injector duty', pressure: 'Mean effective pressure' }

function from({ point }: Build): Data {
  const filling = point[engine.ve.path], duty = point[fuel.worstDuty.path], pressure = point[engine.meanPressure.path], speed = point[engine.speed.path]
  return filling === undefined || duty === undefined || pressure === undefined || speed === undefined ? null : { speed, filling, duty, pressure }
}
const say = (data: NonNullable<Data>, row: Row, system: System): readonly [string, string] => {
  const s = shown(shape[row.value], system)
  return [s.say(data[row.value]), s.say(data[row.value] * row.by)]
}

export default figure<Data>({
  title: 'What becomes of a number when conventions are mixed',
  from,
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, so nothing is drawn.'
    const [right, wrong] = say(data, rows[2]!, system)
    return `At ${shown(shaftSpeed, system).say(data.speed)}. Dark is what the number is, green what it reads after the mistake beneath its name. An injector at ${right} of its turn is shown at ${wrong}: it looks half asleep and has nothing left. A filling above one and a mean pressure that no petrol engine makes are the signs to look for.`
  },
  Picture({ data, system }) {
    if (!data) return null
    return <Bars says="Four numbers as they are and as they read with the wrong displacement." named={[{ name: 'as it is', class: 'fill' }, { name: 'as it reads', class: 'fill-accent' }]}
      rows={rows.flatMap((row) => {
        const [right, wrong] = say(data, row, system)
        // Each number against its own size, so that twice and half can be seen.
        return [{ name: named[row.value], says: right, parts: [{ of: 1, class: 'fill' }] }, { name: row.mixed, says: wrong, parts: [{ of: row.by, class: 'fill-accent' }] }]
      })} />
  },
  table: (data, system) => ({
    head: ['Number', 'As it is', 'Mistake', 'As it reads', 'Times'],
    rows: data ? rows.map((row) => { const [right, wrong] = say(data, row, system); return [named[row.value], right, row.mixed, wrong, writeNumber(row.by, 2)] }) : [],
  }),
})
