import { type About, formula } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { dilutedViscosity } from './dilutedViscosity.ts'
import { dilutionAfter } from './dilutionAfter.ts'
import { driveRate, fuelRate, runningTime, sumpMass, viscosityAt100, viscosityLoss } from './quantities.ts'
import { shearedViscosity } from './shearedViscosity.ts'

/** Hours until shear and fuel together bring the viscosity at 100 °C to a limit. */
export const about = {
  name: 'Time to a viscosity',
  in: {
    fresh: role(viscosityAt100, 'ν_0', 'Fresh oil at 100 °C'), limit: role(viscosityAt100, 'ν_l', 'Least viscosity at 100 °C'), lost: role(viscosityLoss, 'L_∞', 'Loss it settles at'), settling: role(runningTime, 't_L', 'Hours to 63 % of that loss'),
    inflow: fuelRate, mass: sumpMass, driven: role(driveRate, 'k', 'Rate at which hot oil gives fuel off'),
  },
  out: runningTime,
  steps: ['At each time the fresh oil is sheared, then diluted with the fuel that is in it by then.', 'The time is sought, up to a thousand hours, at which the limit is met. Where it is not met there is no such time.'],
  source: ['astm-d7152', 'blending rule, with the shear and dilution models above'],
} as const satisfies About

const longest = 3.6e6
export const timeToViscosity = formula<typeof about>('time-to-viscosity', {}, ({ fresh, limit, lost, settling, inflow, mass, driven }) => {
  const over = (time: number): number => {
    const sheared = shearedViscosity({ fresh, lost, settling, time })
    return dilutedViscosity({ share: Math.min(dilutionAfter({ inflow, mass, driven, time }), 1), viscosity40: sheared, viscosity100: sheared }).viscosity100 - limit
  }
  const found = untraced(() => (over(0) > 0 && over(longest) < 0 ? bracketedRoot(over, 0, longest, 1) : null))
  return found === null ? NaN : root('time to the viscosity', found.x, found.residual)
})
