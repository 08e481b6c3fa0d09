import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { portAngle, portArea, rampAngle, shaftSpeed, timeArea } from './quantities.ts'

/** Open area of a port added up over the time it is open. */
export const about = {
  name: 'Time-area of a port',
  in: {
    whole: role(portArea, 'A_0', 'Whole area'), open: role(portAngle, 'θ_o', 'Port opens'), close: role(portAngle, 'θ_c', 'Port closed'),
    opening: role(rampAngle, 'δ_o', 'Angle in which it opens'), closing: role(rampAngle, 'δ_c', 'Angle in which it closes'), speed: shaftSpeed,
  },
  out: timeArea,
  steps: [
    'Let D be the angle from opening to closed. A port that gets fully open: area times D less half of both ramps.',
    'One that begins to close before it is fully open reaches D over the sum of the ramps of its area: half of that times D.',
    'Divide by shaft speed in radians each second.',
  ],
  source: ['derived', 'integral of the port’s area over time'],
  notes: 'Nothing for a port that closes before it opens.',
} as const satisfies About

export const portTimeArea = formula<typeof about>('port-time-area', {}, ({ whole, open, close, opening, closing, speed }) => {
  const lasts = Math.max(0, close - open)
  const ramps = opening + closing
  return (whole * (lasts >= ramps ? lasts - ramps / 2 : lasts ** 2 / (2 * ramps))) / speed
})
