import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { alternatorTemperature, outputShare } from './quantities.ts'

/**
 * Share of the rated current that an alternator gives in hot air: on a straight line from all of it at the temperature of the test to
 * the share stated hot. `1 − (1 − y) (T − T_0) / (T_h − T_0)`.
 */
export const about = {
  name: 'Output share of a hot alternator',
  in: {
    temperature: alternatorTemperature, rated: role(alternatorTemperature, 'T_0', 'Air in the rating test'), hot: role(alternatorTemperature, 'T_h', 'Air at the hot share'),
    hotShare: role(outputShare, 'y_h', 'Share left hot'),
  },
  out: outputShare,
  equation: '1 - (1 - hotShare) * (temperature - rated) / (hot - rated)',
  source: ['common-practice', 'copper’s resistance rises with heat; a straight line between two stated points'],
  notes: 'The hot share is the maker’s to state.',
  sample: { rated: [degC(15), degC(30)], hot: [degC(80), degC(110)] },
} as const satisfies About

export const hotOutputShare = formula<typeof about>('hot-output-share', {},
  ({ temperature, rated, hot, hotShare }) => 1 - ((1 - hotShare) * (temperature - rated)) / (hot - rated))
