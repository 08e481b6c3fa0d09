/** The deliberate faults of the faulty build: which fields carry it, the margin it must trip, and why. */
export const faults: readonly { readonly fields: readonly string[]; readonly margin: string; readonly why: string }[] = [
  { fields: ['fuel.primary.ratedFlow'], margin: 'primary-pulse-idle', why: 'Primaries so large that idle asks a shorter pulse than they can repeat.' },
  { fields: ['fuel.pump.ratedFlow', 'fuel.pump.secondFlow'], margin: 'fuel-pump-flow', why: 'A pump for a milder engine: it runs out before the injectors do.' },
  { fields: ['boost.wastegate.diameter'], margin: 'wastegate-passes', why: 'A wastegate too small to pass what the turbine does not need: boost would creep above its target.' },
  { fields: ['driveline.clutch.rating'], margin: 'clutch-torque', why: 'A clutch rated below the torque of this engine.' },
]
