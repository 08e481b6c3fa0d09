import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { chargeEnthalpy } from './chargeEnthalpy.ts'
import { heatBalanceGap } from './heatBalanceGap.ts'
import { at } from './point.ts'
import { balanceGapOf, shareOfFuelOf } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { shareOfFuel } from './shareOfFuel.ts'

/** Where the fuel's energy goes at one shaft speed, and what the balance leaves over. */
export default calculation({
  id: 'heat-balance',
  title: 'Where the heat goes',
  theme: 'cooling',
  asks: 'Of the energy in the fuel, how much turns the shaft and where does the rest go?',
  article: 'where-the-heat-goes',
  cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  in: {
    speed: engine.speed, fuelPower: at.fuelPower, brake: engine.power, coolant: at.coolantHeat, oil: at.oilHeat, surface: at.surfaceHeat,
    exhaust: at.exhaustHeat, unburned: at.unburnedHeat, air: engine.air, charge: engine.charge, exhaustTemperature: at.exhaustTemperature,
  },
  out: {
    brakeShare: role(shareOfFuelOf, 'y_e', 'Share to the shaft'), coolantShare: role(shareOfFuelOf, 'y_c', 'Share to the coolant'), oilShare: role(shareOfFuelOf, 'y_o', 'Share to the oil'),
    surfaceShare: role(shareOfFuelOf, 'y_s', 'Share from surfaces'), exhaustShare: role(shareOfFuelOf, 'y_x', 'Share in the exhaust'), unburnedShare: role(shareOfFuelOf, 'y_u', 'Share left unburned'), gap: balanceGapOf,
  },
  curve: ['exhaust', 'exhaustShare'],
  answer({ fuelPower, brake, coolant, oil, surface, exhaust, unburned, air, charge }) {
    const enthalpy = chargeEnthalpy({ flow: air, temperature: charge })
    return {
      brakeShare: shareOfFuel({ part: brake, fuelPower }),
      coolantShare: shareOfFuel({ part: coolant, fuelPower }),
      oilShare: shareOfFuel({ part: oil, fuelPower }),
      surfaceShare: shareOfFuel({ part: surface, fuelPower }),
      exhaustShare: shareOfFuel({ part: exhaust, fuelPower }),
      unburnedShare: shareOfFuel({ part: unburned, fuelPower }),
      gap: heatBalanceGap({ fuelPower, charge: enthalpy, brake, coolant, oil, surface, exhaust, unburned }),
    }
  },
  says: () => 'At {speed} the shaft gets {brakeShare} of {fuelPower}. The exhaust takes {exhaustShare} as heat at {exhaustTemperature} and {unburnedShare} unburned; coolant {coolantShare}, oil {oilShare}. The exhaust is the remainder, so that the sum closes proves the arithmetic, not the split.',
  leavesOut: 'how sure the split is: see the band of the exhaust temperature; heat of the turbocharger’s own bearings',
})
