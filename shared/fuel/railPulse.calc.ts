import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { mm, MPa, ms } from '../quantity/si.ts'
import { echoTime } from './echoTime.ts'
import { linkBore, linkLength, ratedFluidDensity, secondaryFlow, secondaryRatedDrop } from './fields.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { joukowskyPulse } from './joukowskyPulse.ts'
import { lineSpeedOf } from './lineSpeedOf.ts'
import { at } from './point.ts'
import { pulseLeft } from './pulseLeft.ts'
import { pulseOverDrop } from './pulseOverDrop.ts'
import { echo, fuelBulkModulus, fuelChange, hoseSwelling, hoseWall, pressurePulse, wallModulus, waveSpeed } from './quantities.ts'
import { slowStopShare } from './slowStopShare.ts'
import { tubeCompliance } from './tubeCompliance.ts'
import { waveSpeedOf } from './waveSpeedOf.ts'

export default calculation({
  id: 'rail-pulse',
  title: 'Pressure pulse of one injector event',
  theme: 'fuel',
  asks: 'How high can the pressure in the line rise when one injector shuts, and what does that do to the next?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    ratedFlow: secondaryFlow, ratedDrop: secondaryRatedDrop, ratedDensity: ratedFluidDensity, drop: at.drop, density: at.density, bore: linkBore, length: linkLength,
    bulk: free(fuelBulkModulus, MPa(1000)), wall: free(hoseWall, mm(3)), modulus: free(wallModulus, MPa(100)), closing: free(echo, ms(0.4), 'Time in which the injector shuts'),
  },
  out: {
    swelling: hoseSwelling, rigid: role(waveSpeed, 'a_0', 'Wave speed in a rigid line'), speed: role(waveSpeed, 'a', 'Wave speed in this line'), back: role(echo, 't_e', 'Time of an echo'),
    bound: role(pressurePulse, 'Δp_J', 'Upper bound, sudden stop'), pulse: role(pressurePulse, 'Δp_c', 'Pulse with its closing time'), change: role(fuelChange, 'δ_p', 'Change of the next injector’s flow, at most'),
  },
  curve: ['length', 'pulse'],
  answer({ ratedFlow, ratedDrop, ratedDensity, drop, density, bore, length, bulk, wall, modulus, closing }) {
    if (!(drop > 0)) throw new NoAnswer('rail-pulse', 'No pressure is left across the nozzle: the injector passes nothing.')
    const swelling = tubeCompliance({ bore, wall, modulus })
    const speed = waveSpeedOf({ bulk, density, swelling })
    const back = echoTime({ length, waveSpeed: speed })
    const flow = injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density })
    const bound = joukowskyPulse({ density, waveSpeed: speed, change: lineSpeedOf({ flow, bore }) })
    const pulse = pulseLeft({ pulse: bound, share: slowStopShare({ echo: back, closing }) })
    return { swelling, rigid: waveSpeedOf({ bulk, density, swelling: 0 }), speed, back, bound, pulse, change: pulseOverDrop({ pulse, drop }) }
  },
  says: () => 'A wave runs at {speed} in this line and is back after {back}. Stopped at once the flow of one secondary would raise the pressure by {bound}; shutting in {closing} it is {pulse} at most, which moves the flow of an injector that is open just then by {change}.',
  leavesOut: 'Limits of this bound: one injector, a straight line to a large volume, no friction, no damper, no vapour. Several injectors in step with the echo can build up more; a branch or a soft rail takes it down.',
})
