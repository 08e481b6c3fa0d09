import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { rpm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { axleRatio, clutchIron, clutchRating, firstGear, mass, rollingRadius } from './fields.ts'
import { clutchRise, engagementHeat, heatShare, ironSpecificHeat, slipTime } from './quantities.ts'
import { reflectedCarInertia } from './reflectedCarInertia.ts'
import { launchSlipTime } from './launchSlipTime.ts'
import { launchHeat } from './launchHeat.ts'
import { clutchTemperatureRise } from './clutchTemperatureRise.ts'

export default calculation({
  id: 'clutch-engagement-heat',
  title: 'Heat of one launch',
  theme: 'driveline',
  asks: 'How hot does the clutch get in one launch?',
  article: 'clutch-capacity',
  cautions: ['hot-metal', 'rotating-burst', 'model-only'],
  in: {
    speed: free(role(shaftSpeed, 'n', 'Engine speed held'), rpm(4000), 'Engine speed held'), torque: clutchRating, mass, radius: rollingRadius, ratio: firstGear, finalDrive: axleRatio,
    share: free(heatShare, 1), iron: clutchIron, specificHeat: free(ironSpecificHeat, 500),
  },
  out: { heat: engagementHeat, time: slipTime, rise: clutchRise },
  curve: ['speed', 'rise'],
  answer({ speed, torque, mass, radius, ratio, finalDrive, share, iron, specificHeat }) {
    const time = launchSlipTime({ inertia: reflectedCarInertia({ mass, radius, ratio, finalDrive }), speed, torque })
    const heat = launchHeat({ torque, speed, time })
    return { heat, time, rise: clutchTemperatureRise({ heat, share, mass: iron, specificHeat }) }
  },
  says: () => 'One launch from {speed} slips for {time}, makes {heat} of heat and warms the iron by {rise}. A few in a row add up, because it cools in minutes, not seconds.',
  leavesOut: 'The tyres slipping instead, a gradient, rolling resistance, and the moment’s heat of the rubbed face, which is far above the mean.',
})
