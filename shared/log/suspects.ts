/** A number of the sheet that a difference can point at: which, by how much it is tried, and what would settle it. */
export type Suspect = { readonly path: string; readonly says: string; /** Relative step tried. */ readonly step: number; readonly settle: string }

export const suspects: readonly Suspect[] = [
  { path: 'engine.veCurve', says: 'Volumetric efficiency, the whole curve', step: 0.03, settle: 'An air-flow meter on the inlet for one pull, or injectors flowed on a bench: with fuel known, the log tells air.' },
  { path: 'boost.coolerRatedEffectiveness', says: 'Effectiveness of the charge cooler', step: -0.05, settle: 'Two thermocouples, before and behind the charge cooler, and the air in front of it, in one steady pull.' },
  { path: 'fuel.primary.ratedFlow', says: 'Rated flow of a primary', step: -0.04, settle: 'Flow the primaries as a set on a bench at the pressure they run at.' },
  { path: 'fuel.secondary.ratedFlow', says: 'Rated flow of a secondary', step: -0.04, settle: 'Flow the secondaries as a set on a bench at the pressure they run at.' },
  { path: 'fuel.regulator.setting', says: 'Regulator setting', step: -0.04, settle: 'A gauge on the rail, engine off, pump running, manifold open to the air.' },
  { path: 'fuel.primary.deadTime', says: 'Dead time of a primary', step: 0.1, settle: 'Count drops on a bench at two pulse widths and your battery voltage: dead time is where the line meets zero.' },
  { path: 'boost.turbineEfficiency', says: 'Efficiency of the turbine', step: -0.04, settle: 'A pressure tap before the turbine beside a boost gauge, below the speed where the wastegate opens.' },
  { path: 'boost.turbineCapacity', says: 'Flow capacity of the turbine', step: 0.05, settle: 'A pressure tap before the turbine beside a boost gauge, below the speed where the wastegate opens.' },
]
