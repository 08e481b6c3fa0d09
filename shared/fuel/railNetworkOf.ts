import { rotors } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { fittingLoss, fuelDensity, fuelViscosity, fuelVolumeFlow, lineBore, lineLength, pumpFlow, pumpPressure, railLayout, railPressure, regulatorPlace, wallRoughness } from './quantities.ts'
import { signedLineLoss } from './signedLineLoss.ts'

/** Pressures and flows of two rails with their hoses, feed and regulator: at every node what comes in goes out. */
export const about = {
  name: 'Pressures in a network of two rails',
  in: {
    layout: railLayout, place: regulatorPlace, held: role(railPressure, 'p_reg', 'Pressure held by the regulator'), pumped: pumpFlow,
    primary: role(fuelVolumeFlow, 'Q_1', 'Flow of the primaries of one rotor'), secondary: role(fuelVolumeFlow, 'Q_2', 'Flow of the secondaries of one rotor'), rotors,
    feedBore: role(lineBore, 'd_f', 'Bore of the feed'), feedLength: role(lineLength, 'l_f', 'Length of the feed'), feedFittings: role(fittingLoss, 'K_f', 'Fittings of the feed'),
    linkBore: role(lineBore, 'd_l', 'Bore of a link'), linkLength: role(lineLength, 'l_l', 'Length of a link'), linkFittings: role(fittingLoss, 'K_l', 'Fittings of a link'),
    railBore: role(lineBore, 'd_r', 'Bore of a rail'), railSpacing: role(lineLength, 'l_r', 'Distance of injectors in a rail'),
    roughness: wallRoughness, density: fuelDensity, viscosity: fuelViscosity,
  },
  out: {
    pump: role(pumpPressure, 'p_p', 'Pressure at the pump'), firstPrimary: role(railPressure, 'p_1a', 'Pressure at the first primary'), lastPrimary: role(railPressure, 'p_1z', 'Pressure at the last primary'),
    firstSecondary: role(railPressure, 'p_2a', 'Pressure at the first secondary'), lastSecondary: role(railPressure, 'p_2z', 'Pressure at the last secondary'),
    primaryBranch: role(fuelVolumeFlow, 'Q_a', 'Flow into the primary rail'), secondaryBranch: role(fuelVolumeFlow, 'Q_b', 'Flow into the secondary rail'), returned: role(fuelVolumeFlow, 'Q_r', 'Flow returned'),
  },
  steps: [
    'Regulator after the rails: all that is pumped runs the whole way, less at each injector what it takes; pressures are counted back from the regulator.',
    'Regulator near the pump: what is not used returns there, the rails are dead ends, and pressures are counted down from it.',
    'In series the primary rail comes first, a link, then the secondary rail.',
    'In parallel with the regulator at the far end both branches begin and end together: the split is sought at which both lose the same, and a branch may be fed from its far end.',
    'In parallel as dead ends each branch carries what its injectors take.',
  ],
  source: ['white-fluid', 'pipes in series, in parallel and networks: continuity at nodes, one pressure for each node'],
  notes: 'Mean flows of a steady engine. In parallel each branch has a link before and, with the regulator after, one behind its rail.',
} as const satisfies About

export const railNetworkOf = formula<typeof about>('rail-network-of', {}, (x) => {
  const fluid = { roughness: x.roughness, density: x.density, viscosity: x.viscosity }
  const lossOf = (bore: number, length: number, fittings: number) => (flow: number): number => signedLineLoss({ flow, bore, length, fittings, ...fluid })
  const feed = lossOf(x.feedBore, x.feedLength, x.feedFittings)
  const link = lossOf(x.linkBore, x.linkLength, x.linkFittings)
  const between = lossOf(x.railBore, x.railSpacing, 0)
  /** What a rail loses from its first to its last injector, each taking `each`. */
  const rail = (flow: number, each: number): number => {
    let lost = 0
    for (let i = 1; i < x.rotors; i++) lost += between(flow - i * each)
    return lost
  }
  const primaries = x.rotors * x.primary, secondaries = x.rotors * x.secondary
  const used = primaries + secondaries
  const after = x.place === 'after'
  const into = after ? x.pumped : used
  const returned = x.pumped - used
  if (x.layout === 'series') {
    const lost = [rail(into, x.primary), link(into - primaries), rail(into - primaries, x.secondary)] as const
    const firstPrimary = after ? x.held + lost[0] + lost[1] + lost[2] : x.held - feed(into)
    const lastPrimary = firstPrimary - lost[0]
    const firstSecondary = lastPrimary - lost[1]
    return {
      pump: after ? firstPrimary + feed(into) : x.held, firstPrimary, lastPrimary, firstSecondary, lastSecondary: firstSecondary - lost[2],
      primaryBranch: into, secondaryBranch: into - primaries, returned,
    }
  }
  const branch = (flow: number, each: number): number => link(flow) + rail(flow, each) + (after ? link(flow - x.rotors * each) : 0)
  let split = primaries
  if (after && into > 0) {
    const miss = (flow: number): number => branch(flow, x.primary) - branch(into - flow, x.secondary)
    const found = untraced(() => bracketedRoot(miss, -secondaries, into + secondaries, into * 1e-12))
    split = root('flow into the primary rail', found.x, found.residual)
  }
  const tee = after ? x.held + branch(split, x.primary) : x.held - feed(into)
  const firstPrimary = tee - link(split)
  const firstSecondary = tee - link(into - split)
  return {
    pump: after ? tee + feed(into) : x.held, firstPrimary, lastPrimary: firstPrimary - rail(split, x.primary), firstSecondary, lastSecondary: firstSecondary - rail(into - split, x.secondary),
    primaryBranch: split, secondaryBranch: into - split, returned,
  }
})
