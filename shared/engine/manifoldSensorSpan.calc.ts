import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { kPa, percent } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { gaugeBoost } from '../boost/gaugeBoost.ts'
import { engineMapSensorMax, siteAirPressure } from './fields.ts'
import { at } from './point.ts'
import { countsOfReading, manifoldPressure, overshootShare, readingRoom, readingStep } from './quantities.ts'
import { roomAbove } from './roomAbove.ts'
import { sensorStep } from './sensorStep.ts'
import { withOvershoot } from './withOvershoot.ts'

export default calculation({
  id: 'manifold-sensor-span', title: 'Span of the manifold pressure sensor', theme: 'engine', article: 'the-order-of-decisions', cautions: ['knock', 'model-only'],
  asks: 'Does the manifold sensor read far enough, and how finely?',
  in: {
    manifold: at.manifold, outside: siteAirPressure, highest: engineMapSensorMax, lowest: free(manifoldPressure, kPa(20), 'Lowest pressure the sensor reads'),
    overshoot: free(overshootShare, percent(15)), counts: free(countsOfReading, 1024),
  },
  out: { room: readingRoom, needed: role(manifoldPressure, 'p_need', 'Highest pressure that must be read'), step: readingStep },
  curve: ['manifold', 'room'],
  answer({ manifold, outside, highest, lowest, overshoot, counts }) {
    if (!(highest > lowest)) throw new NoAnswer('manifold-sensor-span', 'The sensor’s highest reading must lie above its lowest.')
    const needed = withOvershoot({ manifold, boost: gaugeBoost({ manifold, outside }), overshoot })
    return { room: roomAbove({ highest, needed }), needed, step: sensorStep({ lowest, highest, counts }) }
  },
  says: ({ room }) => room < 0
    ? 'With {overshoot} of overshoot the manifold reaches {needed}, past the {highest} this sensor reads: it would show its last value and the engine would run lean without a sign.'
    : 'With {overshoot} of overshoot the manifold reaches {needed}, and the sensor reads {room} more. One step of the controller is {step}: a wider sensor than needed reads idle more coarsely.',
  leavesOut: 'The sensor’s own error, its drift with heat, and how fast the controller samples it.',
})
