import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { coolantBoilingPoint } from './coolantBoilingPoint.ts'
import { capPressure, glycol } from './fields.ts'
import { marginToBoiling } from './marginToBoiling.ts'
import { at } from './point.ts'
import { pressureUnderCap } from './pressureUnderCap.ts'
import { boilMarginOf, systemPressure } from './quantities.ts'

/** How far the bulk of the coolant stands from boiling under its cap. */
export default calculation({
  id: 'boil-margin',
  title: 'Boil margin',
  theme: 'cooling',
  asks: 'At what temperature does the coolant boil under its cap, and how far off is that?',
  article: 'coolant-mixture-and-boil-margin',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: { outside: siteAirPressure, cap: capPressure, glycol, coolant: at.coolantTemperature },
  out: { pressure: systemPressure, boiling: at.boilingPoint, margin: boilMarginOf },
  curve: ['cap', 'boiling'],
  answer({ outside, cap, glycol, coolant }) {
    const pressure = pressureUnderCap({ outside, cap })
    const boiling = coolantBoilingPoint({ pressure, glycol })
    return { pressure, boiling, margin: marginToBoiling({ boiling, coolant }) }
  },
  says: ({ margin }) => margin <= 0
    ? 'It boils at {boiling}; at {coolant} the bulk is there already, and the cap lets it out.'
    : 'It boils at {boiling}: the bulk at {coolant} stands {margin} below. Around the plugs metal is hotter and boils it sooner.',
  leavesOut: 'hot spots in the housings, the pump’s suction side, a cap that opens early, additives',
})
