import { type Sources } from '../data/source.ts'

export const sources = {
  'jcgm-100': { author: 'Joint Committee for Guides in Metrology', title: 'JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in measurement', year: '2008', seen: 'confirmed by search' },
  'jcgm-101': { author: 'Joint Committee for Guides in Metrology', title: 'JCGM 101:2008, Supplement 1 to the Guide: Propagation of distributions using a Monte Carlo method', year: '2008', seen: 'confirmed by search' },
  'wichmann-hill': { author: 'B. A. Wichmann, I. D. Hill', title: 'Generating good pseudo-random numbers', year: '2006', place: 'Computational Statistics and Data Analysis 51, 1614', seen: 'confirmed by search' },
  'wilson-1927': { author: 'E. B. Wilson', title: 'Probable inference, the law of succession, and statistical inference', year: '1927', place: 'Journal of the American Statistical Association 22, 209', seen: 'from memory' },
  'newcombe-1998': { author: 'R. G. Newcombe', title: 'Two-sided confidence intervals for the single proportion: comparison of seven methods', year: '1998', place: 'Statistics in Medicine 17, 857', seen: 'from memory' },
  'abramowitz-stegun': { author: 'M. Abramowitz, I. A. Stegun', title: 'Handbook of Mathematical Functions', year: '1964', place: 'National Bureau of Standards, Applied Mathematics Series 55', seen: 'from memory' },
} as const satisfies Sources
