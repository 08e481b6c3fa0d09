import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { litre } from '../quantity/si.ts'
import { premix } from './fields.ts'
import { firstCanVolume } from './firstCanVolume.ts'
import { premixRatioOf } from './premixRatioOf.ts'
import { premixRatio, premixShare, tankVolume } from './quantities.ts'
import { restOf } from './restOf.ts'

export default calculation({
  id: 'premix-two-cans',
  title: 'Premix from two containers',
  theme: 'oil',
  asks: 'How much of each of two cans gives the oil share I want?',
  article: 'premix-arithmetic-and-dosing',
  cautions: ['fuel-additives-skin', 'fuel-vapour', 'emission-law', 'model-only'],
  in: { wanted: premix, total: free(tankVolume, litre(20), 'Fuel wanted in all'), first: free(premixShare, 0.02, 'Oil share of the first can'), second: free(premixShare, 0, 'Oil share of the second can') },
  out: { fromFirst: role(tankVolume, 'V_1', 'From the first can'), fromSecond: role(tankVolume, 'V_2', 'From the second can'), ratio: premixRatio },
  curve: ['wanted', 'fromFirst'],
  mayLack: ['ratio'],
  answer({ wanted, total, first, second }) {
    if (first === second) throw new NoAnswer('premix-two-cans', 'Both cans hold the same share: no mixture of the two has another.')
    if (wanted < Math.min(first, second) || wanted > Math.max(first, second)) throw new NoAnswer('premix-two-cans', 'The wanted share lies outside those of the two cans: with these two it cannot be mixed. Pour oil in, or take plain fuel as the second.')
    const fromFirst = firstCanVolume({ total, wanted, first, second })
    return { fromFirst, fromSecond: restOf({ total, part: fromFirst }), ratio: premixRatioOf({ share: wanted }) }
  },
  says: () => 'Take {fromFirst} from the first can and {fromSecond} from the second: {total} with {wanted} of oil, {ratio} to 1.',
  leavesOut: 'Oil that has settled: shake both cans first. Volumes are of the fuel without its oil; at 1 in 50 the difference is 2 %.',
})
