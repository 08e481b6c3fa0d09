import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { voltage } from '../spark/fields.ts'
import { deadTimeAtVoltage } from './deadTimeAtVoltage.ts'
import { deadTimeLowVoltage, deadTimeVoltage, primaryDeadTime, primaryDeadTimeLow, primarySmallestPulse, secondaryDeadTime, secondaryDeadTimeLow, secondarySmallestPulse } from './fields.ts'
import { at } from './point.ts'
import { smallestPulseShifted } from './smallestPulseShifted.ts'

export default calculation({
  id: 'dead-times',
  title: 'Dead time over voltage',
  theme: 'fuel',
  asks: 'What is the dead time of each stage at the voltage that the car has now?',
  article: 'what-an-injector-rating-means',
  cautions: ['electrical', 'fuel-vapour', 'model-only'],
  in: {
    voltage, at: deadTimeVoltage, secondAt: deadTimeLowVoltage, primary: primaryDeadTime, primarySecond: primaryDeadTimeLow, primarySmallest: primarySmallestPulse,
    secondary: secondaryDeadTime, secondarySecond: secondaryDeadTimeLow, secondarySmallest: secondarySmallestPulse,
  },
  out: { primaryNow: at.primaryDeadTime, secondaryNow: at.secondaryDeadTime, primaryLeast: at.primarySmallestPulse, secondaryLeast: at.secondarySmallestPulse },
  curve: ['voltage', 'primaryNow'],
  answer({ voltage, at: first, secondAt, primary, primarySecond, primarySmallest, secondary, secondarySecond, secondarySmallest }) {
    if (first === secondAt) throw new NoAnswer('dead-times', 'The two dead times of an injector are stated at the same voltage: one of the two voltages has to be lower.')
    const primaryNow = deadTimeAtVoltage({ deadTime: primary, at: first, second: primarySecond, secondAt, voltage })
    const secondaryNow = deadTimeAtVoltage({ deadTime: secondary, at: first, second: secondarySecond, secondAt, voltage })
    return {
      primaryNow, secondaryNow,
      primaryLeast: smallestPulseShifted({ smallest: primarySmallest, deadTime: primary, now: primaryNow }),
      secondaryLeast: smallestPulseShifted({ smallest: secondarySmallest, deadTime: secondary, now: secondaryNow }),
    }
  },
  says: () => 'At {voltage} a primary loses {primaryNow} at each opening and a secondary {secondaryNow}; their shots repeat from {primaryLeast} and {secondaryLeast} on. A controller that is told another figure is wrong by the difference in every pulse, most at idle.',
  leavesOut: 'Coil temperature and fuel pressure, which both lengthen the dead time.',
})
