import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { engineRotors, siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { feedBore, feedFittings, feedLength, layout, linkBore, linkFittings, linkLength, primariesPerRotor, primaryFlow, primaryRatedDrop, railBore, railSpacing, regulatorRefers, regulatorSetting, regulatorStands, roughness, runningTemperature, secondariesPerRotor, secondaryFlow, secondaryRatedDrop, viscosity } from './fields.ts'
import { flowOfOneRotor } from './flowOfOneRotor.ts'
import { flowShareOf } from './flowShareOf.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { otherShare } from './otherShare.ts'
import { at } from './point.ts'
import { fuelVolumeFlow, linePressureLoss, pumpPressure, railPressure } from './quantities.ts'
import { railNetworkOf } from './railNetworkOf.ts'
import { referencedPressure } from './referencedPressure.ts'
import { widestGap } from './widestGap.ts'

export default calculation({
  id: 'rail-network',
  title: 'Rails in series, in parallel, or as a dead end',
  theme: 'fuel',
  asks: 'What pressure stands at each injector, and how does the flow part between the rails?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    layout, place: regulatorStands, setting: regulatorSetting, reference: regulatorRefers, manifold: engine.manifold, outside: siteAirPressure, pumped: at.pumpFlow, used: at.volumeFlow, rotors: engineRotors,
    feedBore, feedLength, feedFittings, linkBore, linkLength, linkFittings, railBore, railSpacing, roughness, density: at.density, viscosity20: viscosity, temperature: runningTemperature,
    primaryFlow, primaryDrop: primaryRatedDrop, primaries: primariesPerRotor, secondaryFlow, secondaryDrop: secondaryRatedDrop, secondaries: secondariesPerRotor,
  },
  out: {
    firstPrimary: role(railPressure, 'p_1a', 'Pressure at the first primary'), lastPrimary: role(railPressure, 'p_1z', 'Pressure at the last primary'),
    firstSecondary: role(railPressure, 'p_2a', 'Pressure at the first secondary'), lastSecondary: role(railPressure, 'p_2z', 'Pressure at the last secondary'),
    gap: role(linePressureLoss, 'Δp_w', 'Widest difference between injectors'), pump: pumpPressure, primaryBranch: role(fuelVolumeFlow, 'Q_a', 'Flow into the primary rail'),
    secondaryBranch: role(fuelVolumeFlow, 'Q_b', 'Flow into the secondary rail'), returned: role(fuelVolumeFlow, 'Q_r', 'Flow returned'),
  },
  curve: ['linkBore', 'lastSecondary'],
  answer(x) {
    const { layout: shape, place, pumped, used, rotors, density } = x
    if (x.primaries === 0) throw new NoAnswer('rail-network', 'There is no primary injector: nothing feeds the rotors.')
    if (pumped < used) throw new NoAnswer('fuel-pump', 'The pump gives less than the engine burns: no steady pressure stands in the rails.')
    const share = flowShareOf({ primaryFlow: x.primaryFlow, primaryDrop: x.primaryDrop, primaries: x.primaries, secondaryFlow: x.secondaryFlow, secondaryDrop: x.secondaryDrop, secondaries: x.secondaries })
    const { firstPrimary, lastPrimary, firstSecondary, lastSecondary, pump, primaryBranch, secondaryBranch, returned } = railNetworkOf({
      layout: shape, place, held: x.reference === 'manifold' ? referencedPressure({ setting: x.setting, manifold: x.manifold, outside: x.outside }) : x.setting, pumped, rotors,
      primary: flowOfOneRotor({ used, share: otherShare({ share }), rotors }), secondary: flowOfOneRotor({ used, share, rotors }),
      feedBore: x.feedBore, feedLength: x.feedLength, feedFittings: x.feedFittings, linkBore: x.linkBore, linkLength: x.linkLength, linkFittings: x.linkFittings, railBore: x.railBore, railSpacing: x.railSpacing,
      roughness: x.roughness, density, viscosity: fuelViscosityAt({ viscosity20: x.viscosity20, temperature: x.temperature }),
    })
    return { firstPrimary, lastPrimary, firstSecondary, lastSecondary, gap: widestGap({ firstPrimary, lastPrimary, firstSecondary, lastSecondary }), pump, primaryBranch, secondaryBranch, returned }
  },
  says: ({ place, layout }) => `{firstPrimary} stands at the first primary and {lastSecondary} at the last secondary; no two injectors differ by more than {gap}. ${place === 'after'
    ? layout === 'series' ? 'All that is pumped passes both rails and sweeps air and vapour out; {returned} returns.' : '{primaryBranch} goes into the primary rail and {secondaryBranch} into the secondary; {returned} returns from where they join.'
    : 'Rails beyond the regulator are dead ends: only what is burned moves through them, and trapped air leaves by the injectors alone.'}`,
  leavesOut: 'Pulses of the injectors, air in a rail that lies high, and how a regulator’s pressure rises with what it returns.',
})
