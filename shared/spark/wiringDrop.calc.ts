import { calculation, free } from '../calculation/calculation.ts'
import { degC } from '../quantity/si.ts'
import { wireArea, wireCurrent, wireDrop, wireHeat, wireLength, wireResistance, wireTemperature } from './quantities.ts'
import { wireDropAt } from './wireDropAt.ts'
import { wireHeatAt } from './wireHeatAt.ts'
import { wireResistanceOf } from './wireResistanceOf.ts'

export default calculation({
  id: 'wiring-drop',
  title: 'Voltage drop of a wire',
  theme: 'spark',
  asks: 'What voltage does this wire keep for itself?',
  article: 'the-order-of-decisions',
  cautions: ['electrical', 'fuel-vapour', 'model-only'],
  in: { current: free(wireCurrent, 12), length: free(wireLength, 9, 'Length of wire, there and back'), area: free(wireArea, 2.5e-6), temperature: free(wireTemperature, degC(50)) },
  out: { drop: wireDrop, resistance: wireResistance, heat: wireHeat },
  curve: ['area', 'drop'],
  answer({ current, length, area, temperature }) {
    const resistance = wireResistanceOf({ length, area, temperature })
    return { resistance, drop: wireDropAt({ current, resistance }), heat: wireHeatAt({ current, resistance }) }
  },
  says: () => '{current} through {length} of this wire loses {drop} and makes {heat} of heat. A fuel pump or a coil feels every tenth of a volt.',
  leavesOut: 'Plugs, relays, fuses and earth points, which often lose more than the wire. The fuse is chosen for the wire, not for the load.',
})
