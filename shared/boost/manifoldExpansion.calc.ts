import { calculation, free } from '../calculation/calculation.ts'
import { degC, mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { expansionOfHotMaterial } from './expansionOfHotMaterial.ts'
import { hotMaterialOf } from './fields.ts'
import { hotGrowth } from './hotGrowth.ts'
import { coldTemperature, hotExpansion, hotGrowth as growth, hotLength, metalTemperature } from './quantities.ts'
import { slipOfFlange } from './slipOfFlange.ts'

export default calculation({
  id: 'manifold-expansion', title: 'Exhaust manifold between cold and hot', theme: 'turbo', article: 'hot-side-materials-and-heat', cautions: ['hot-metal', 'exhaust-gas', 'model-only'],
  asks: 'How much does the exhaust manifold grow when hot, and how far does its flange slide on the engine?',
  in: {
    material: hotMaterialOf, length: free(hotLength, mm(350), 'Length of the longest pipe'), hot: free(metalTemperature, degC(750), 'Metal temperature of the pipes'), cold: free(coldTemperature, degC(20), 'Temperature at which it was fitted'),
    span: free(hotLength, mm(260), 'Distance between the outermost studs'), flange: free(metalTemperature, degC(450), 'Metal temperature of the flange'),
    engine: free(metalTemperature, degC(110), 'Metal temperature of the engine at the flange'), ofEngine: free(hotExpansion, 11e-6, 'Expansion of the rotor housing’s metal at the flange'),
  },
  out: { growth: role(growth, 'Δl', 'Growth of the longest pipe'), slip: role(growth, 's_f', 'Slip at the outermost stud'), expansion: hotExpansion },
  curve: ['hot', 'growth'],
  answer({ material, length, hot, cold, span, flange, engine, ofEngine }) {
    const expansion = expansionOfHotMaterial({ material })
    return {
      growth: hotGrowth({ length, expansion, hot, cold }), expansion,
      slip: slipOfFlange({ flange: hotGrowth({ length: span, expansion, hot: flange, cold }), engine: hotGrowth({ length: span, expansion: ofEngine, hot: engine, cold }) }),
    }
  },
  says: () => 'From {cold} to {hot} the pipe grows by {growth}; held at both ends it would have to bend, push or crack. The flange slides {slip} on the engine at its outermost stud each time it heats up: leave the stud holes that much room, one flange for both rotors more than two.',
  leavesOut: 'Uneven heat, creep, the turbocharger’s weight, and the stud’s own loss of clamp when it is warmer than what it holds.',
})
