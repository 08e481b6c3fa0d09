import { formula, type About } from '../formula/formula.ts'
import { airGasConstant } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { inducerChoke } from './inducerChoke.ts'
import { exducer, gasFlow, gasPressure, gasTemperature, inducer, throatShare, turboSpeed } from './quantities.ts'
import { tipMachOf } from './tipMachOf.ts'
import { tipSpeedOf } from './tipSpeedOf.ts'

/** Estimated ends of a wheel’s speed line: flow at surge and at the right edge. */
export const about = {
  name: 'Ends of a speed line, from the wheel',
  in: { inducer, exducer, throat: throatShare, speed: turboSpeed, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), pressure: role(gasPressure, 'p_1', 'Compressor inlet pressure') },
  out: { surge: role(gasFlow, 'm_s', 'Flow at surge'), right: role(gasFlow, 'm_k', 'Flow at the right edge') },
  steps: [
    'A fast line ends where the inducer chokes. A slow one ends before: its blades make no more pressure once air enters at three quarters of the inducer’s rim speed over 85 % of its face.',
    'The two join smoothly: the right edge is (choke^-6 + slow^-6)^(-1/6).',
    'Surge lies at 0.28 + 0.16 M² of the right edge, M being the tip Mach number, 0.65 at most: maps narrow towards the top.',
  ],
  source: ['common-practice', 'no source: no published form predicts a surge line from size. Choke after Dixon, section 7.10'],
  notes: 'An estimate. A ported shroud, the diffuser and the housing move surge by a quarter either way.',
} as const satisfies About

export const wheelFlows = formula<typeof about>('wheel-flows', {}, ({ inducer: d1, exducer: d2, throat, speed, temperature, pressure }) => {
  const density = pressure / (airGasConstant.value * temperature)
  const choke = inducerChoke({ inducer: d1, throat, speed, temperature, pressure })
  const slow = density * 0.85 * ((Math.PI * d1 * d1) / 4) * 0.75 * ((speed * d1) / 2)
  const right = (choke ** -6 + slow ** -6) ** (-1 / 6)
  const mach = tipMachOf({ tipSpeed: tipSpeedOf({ speed, diameter: d2 }), temperature })
  return { surge: right * Math.min(0.65, 0.28 + 0.16 * mach * mach), right }
})
