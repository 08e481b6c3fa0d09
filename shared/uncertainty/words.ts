import { type WordsFor } from '../quantity/quantity.ts'
import type * as quantities from './quantities.ts'

/** What each quantity of chance and tolerance means and where it comes from. */
export const words = {
  standardUncertainty: { means: 'How far a number may be out, as the standard deviation of what it could be.', measure: 'From repeated readings, or from a tolerance: over 1.96 for a normal one, over the root of 3 for a rectangular one.' },
  sampleCount: { means: 'How often the whole calculation was done with numbers drawn anew.', measure: 'Chosen: four times as many halve the sampling error.' },
  seed: { means: 'Where the row of drawn numbers begins: the same seed gives the same draw.', measure: 'Chosen.' },
  chance: { means: 'Share of the draws, or of a distribution, in which something is so. Said of the model, not of the car.', measure: 'Counted over the samples, or worked out.' },
  deviationRatio: { means: 'How many standard uncertainties lie between a value and its limit.', measure: 'Worked out.' },
  sampledMean: { means: 'Mean of a result over all samples.', measure: 'Worked out.' },
  intervalEnd: { means: 'Lower or upper end of the interval that holds 95 of 100 samples, as many left out above as below.', measure: 'Counted over the samples in their order.' },
  publishedExample: { means: 'An example of a published guide, run through the same draws and sums as a build.', measure: 'Chosen.' },
} satisfies WordsFor<typeof quantities>
