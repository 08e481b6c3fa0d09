import { loadShareOf, coolantTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import trackSession from '@trochoid/compute/cooling/trackSession.calc.ts'
import { minutes } from '@trochoid/compute/quantity/si.ts'
import { asked } from './asked.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly limit: number; readonly boiling: number; readonly reached: readonly (number | null)[] }

const lengths = [2, 5, 20] as const

/** Highest coolant temperature of sessions of three lengths over the part of each lap at full load. */
export default lineFigure<Data>({
  title: 'How hot the coolant gets, over the part of a lap at full load',
  says: 'Highest coolant temperature of a short, a middling and a long session over the part of the lap at full load.',
  x: loadShareOf, y: coolantTemperatureOf, zoom: true,
  from(build) {
    const { given, at } = asked(trackSession, build), x = steps(0.1, 0.7, 12)
    const boiling = at({ time: minutes(1) })?.['boiling'], limit = given('limit')
    if (boiling === undefined) return null
    const lines = lengths.map((length) => ({ name: `${length} minutes`, y: x.map((share) => at({ share, time: minutes(length) })?.['peak'] ?? null) }))
    return {
      x, limit, boiling, lines, reached: lines.map(({ y }) => x[y.findIndex((t) => t !== null && t > limit)] ?? null),
      levels: [{ says: 'limit you accept', at: limit, left: true }, { says: 'boils', at: boiling, left: true }],
    }
  },
  summary({ limit, boiling, reached }, system) {
    const t = shown(coolantTemperatureOf, system), s = shown(loadShareOf, system)
    const says = reached.map((share, i) => `${lengths[i]!} minutes ${share === null ? 'stay within it all the way' : `pass it from about ${s.say(share, 2)}`}`)
    return `From warm, at the build’s speed of most power and the sheet’s car speed. You accept ${t.say(limit)}: ${says.join(', ')}. It boils at ${t.say(boiling)}, and there the lines end in a level.`
  },
  without: 'The coolant of this build boils before the session begins, or its cooler is not known: nothing is drawn.',
})
