import { formula, type About } from '../formula/formula.ts'
import { type Constant } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { chance, sampleCount } from './quantities.ts'
import { normal95 } from './spread.ts'

const width: Constant = { value: normal95, unit: '1', symbol: 'z', name: 'half of the 95 % interval over the standard deviation of a normal distribution', source: 'Definition' }

/** Where the true share lies, 95 times in 100, when so many of so many samples were counted: honest too where all or none were. */
export const about = {
  name: 'Sampling error of a chance',
  in: { share: role(chance, 'p', 'Share that was counted'), samples: sampleCount },
  out: { low: role(chance, 'P_l', 'Lower end'), high: role(chance, 'P_h', 'Upper end') },
  constants: { z: width },
  equation: {
    low: '(share + z^2 / (2 * samples) - z * sqrt(share * (1 - share) / samples + z^2 / (4 * samples^2))) / (1 + z^2 / samples)',
    high: '(share + z^2 / (2 * samples) + z * sqrt(share * (1 - share) / samples + z^2 / (4 * samples^2))) / (1 + z^2 / samples)',
  },
  source: ['wilson-1927', 'the score interval'],
  notes: 'For samples drawn independently. It tells how well the chance in the model was counted, and nothing of how well the model fits the car.',
  // At a share of nothing the lower end is a difference of two equal numbers.
  sample: { share: [0.001, 0.999], samples: [10, 1e5] },
} as const satisfies About

export const shareInterval = formula<typeof about>('share-interval', {}, ({ share, samples }) => {
  const z = width.value
  const middle = share + z ** 2 / (2 * samples)
  const reach = z * Math.sqrt((share * (1 - share)) / samples + z ** 2 / (4 * samples ** 2))
  const by = 1 + z ** 2 / samples
  return { low: Math.max(0, (middle - reach) / by), high: Math.min(1, (middle + reach) / by) }
})
