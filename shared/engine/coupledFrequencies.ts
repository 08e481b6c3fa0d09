import { formula, type About } from '../formula/formula.ts'
import { soundSpeed } from '../media/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { ductArea, ductLength, resonatorVolume, tunedFrequency } from './quantities.ts'

/** The two frequencies at which a chamber on its runner and a plenum on its feed pipe swing together. */
export const about = {
  name: 'Frequencies of runner and plenum together',
  in: {
    soundSpeed, chamber: role(resonatorVolume, 'V_1', 'Chamber volume that swings'), runnerArea: role(ductArea, 'A_1', 'Flow area of the runner'), runnerLength: role(ductLength, 'l_1', 'Length of the runner'),
    plenum: role(resonatorVolume, 'V_2', 'Plenum volume'), feedArea: role(ductArea, 'A_2', 'Flow area of the feed pipe'), feedLength: role(ductLength, 'l_2', 'Length of the feed pipe'),
  },
  out: { low: role(tunedFrequency, 'f_1', 'Lower frequency'), high: role(tunedFrequency, 'f_2', 'Upper frequency') },
  steps: [
    'Air in each pipe is a mass, air in each volume a spring: with q the volume moved in each pipe, q_1″ = -a q_1 + b q_2 and q_2″ = d q_1 - d q_2.',
    'a = c² A_1/l_1 (1/V_1 + 1/V_2), b = c² A_1/(l_1 V_2), d = c² A_2/(l_2 V_2).',
    'The squares of both angular frequencies are (a + d)/2 ± sqrt((a - d)²/4 + b d).',
  ],
  source: ['kinsler', 'chapter 10, acoustic inertance and compliance; the two combined here'],
  notes: 'Pipes and volumes short against the wavelength, no friction, a still engine: one chamber at a time is open to the plenum.',
} as const satisfies About

export const coupledFrequencies = formula<typeof about>('coupled-frequencies', {}, ({ soundSpeed: c, chamber, runnerArea, runnerLength, plenum, feedArea, feedLength }) => {
  const a = ((c * c * runnerArea) / runnerLength) * (1 / chamber + 1 / plenum)
  const b = (c * c * runnerArea) / (runnerLength * plenum)
  const d = (c * c * feedArea) / (feedLength * plenum)
  const half = Math.sqrt((a - d) ** 2 / 4 + b * d)
  const high = (a + d) / 2 + half
  // The lower one by the product of both, which keeps its digits when they lie far apart.
  return { low: Math.sqrt((d * (a - b)) / high) / (2 * Math.PI), high: Math.sqrt(high) / (2 * Math.PI) }
})
