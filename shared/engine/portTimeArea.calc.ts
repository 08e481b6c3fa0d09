import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { deg, mm } from '../quantity/si.ts'
import { closingApex } from './closingApex.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineShift, engineWidth } from './fields.ts'
import { openingApex } from './openingApex.ts'
import { at } from './point.ts'
import { portAreaAt } from './portAreaAt.ts'
import { portGasSpeed } from './portGasSpeed.ts'
import { portRamp } from './portRamp.ts'
import { portTimeArea } from './portTimeArea.ts'
import { portWholeArea } from './portWholeArea.ts'
import { portAngle, portArea, portHeight, portSpeed, portWidth, timeArea } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 'port-time-area', title: 'Port area over shaft angle', theme: 'engine', article: 'how-a-two-rotor-breathes', cautions: ['model-only'],
  asks: 'How far is a port open at each shaft angle, and how much area and time does that give the gas?',
  in: {
    angle: free(portAngle, deg(180), 'Shaft angle after smallest volume, at which to look'), open: free(portAngle, deg(32), 'Port opens'), close: free(portAngle, deg(320), 'Port closed'),
    width: free(portWidth, mm(36)), height: free(portHeight, mm(44)), speed: at.speed,
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, housing: engineWidth, shift: engineShift, stated: engineDisplacement,
  },
  out: { area: portArea, whole: role(portArea, 'A_0', 'Whole area of the port'), timeArea, gas: portSpeed },
  curve: ['angle', 'area'],
  answer({ angle, open, close, width, height, speed, housing, ...description }) {
    if (!(close > open)) throw new NoAnswer('port-time-area', 'The port closes before it opens: count both angles from the same smallest volume, the one at which the chamber’s stroke begins.')
    const { generatingRadius, eccentricity, shift } = description
    const whole = portWholeArea({ width, height })
    const pace = { height, generatingRadius, eccentricity, shift }
    const ramps = { opening: portRamp({ ...pace, rotorAngle: openingApex({ open }) }), closing: portRamp({ ...pace, rotorAngle: closingApex({ close }) }) }
    const added = portTimeArea({ whole, open, close, ...ramps, speed })
    return { area: portAreaAt({ whole, angle, open, close, ...ramps }), whole, timeArea: added, gas: portGasSpeed({ displacement: describedDisplacement({ ...description, width: housing }), timeArea: added }) }
  },
  says: ({ gas }) => gas > 120
    ? 'At {angle} the port is open by {area} of {whole}. At {speed} it gives {timeArea} in each charge: the gas would have to pass at {gas} on average, too fast to fill the chamber well.'
    : 'At {angle} the port is open by {area} of {whole}. At {speed} it gives {timeArea} in each charge, which one chamber’s displacement passes at {gas} on average.',
  leavesOut: 'The flow coefficient of the port, waves in the pipe, and overlap with the other port. Of several ports into one chamber, this is one: areas add.',
})
