import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import faceCompression from '@trochoid/compute/engine/faceCompression.calc.ts'
import { crankingSpeed, facePressure } from '@trochoid/compute/engine/quantities.ts'
import { bar, rpm } from '@trochoid/compute/quantity/si.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly ends: readonly [number, number]; readonly ideal: number }

const common = rpm(250)
const readings = [bar(8), bar(7), bar(6)]

/** What three faces read over the speed at which the starter turns them. */
export default lineFigure<Data>({
  title: 'The same face at another cranking speed',
  says: 'Compression that three faces read over cranking speed, with what a face without leakage would read.',
  x: crankingSpeed, y: facePressure,
  from({ sheet, point }) {
    const of: AnyCalculation = faceCompression
    const given = valuesFor(of, sheet, point)
    const at = (reading: number, wanted: number, out = 'corrected'): number | null => answered(of, { ...given, reading, speed: common, wanted }, out)
    const ideal = at(readings[0]!, common, 'ideal')
    const x = steps(rpm(200), rpm(300), 10)
    const slow = at(readings[1]!, rpm(200)), fast = at(readings[1]!, rpm(300))
    if (ideal === null || slow === null || fast === null || ideal < readings[0]!) return null
    return {
      x, ideal, ends: [slow, fast],
      lines: readings.map((reading, i) => ({ name: ['A tight face', 'A middling face', 'A tired face'][i]!, y: x.map((n) => at(reading, n)) })),
      levels: [{ says: 'without leakage', at: ideal, left: true }],
      uprights: [{ says: 'where readings are compared', at: common }],
    }
  },
  summary({ ends: [slow, fast], ideal }, system) {
    const p = shown(facePressure, system), n = shown(crankingSpeed, system)
    return `Three faces that read ${readings.map((r) => p.say(r)).join(', ')} at ${n.say(common)}. The middle one reads ${p.say(slow)} with a weak battery at ${n.say(rpm(200))} and ${p.say(fast)} at ${n.say(rpm(300))}. What is missing to ${p.say(ideal)} leaked, and it leaks less the less time it has.`
  },
  without: 'Compression ratio or outside pressure of this build leave no room for these readings, so nothing is drawn.',
})
