import { calculation, free } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { gasDensity as densityAt } from '../engine/gasDensity.ts'
import { churchillFriction } from '../fuel/churchillFriction.ts'
import { wallRoughness } from '../fuel/quantities.ts'
import { airViscosity } from '../media/airViscosity.ts'
import { deg, degC, kPa, mm, um } from '../quantity/si.ts'
import { bendLoss } from './bendLoss.ts'
import { coefficientSum } from './coefficientSum.ts'
import { ductCoefficient } from './ductCoefficient.ts'
import { ductReynolds } from './ductReynolds.ts'
import { ductRoughness } from './ductRoughness.ts'
import { ductSpeed } from './ductSpeed.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { lossCoefficientFrom } from './lossCoefficientFrom.ts'
import { at } from './point.ts'
import { pressureBeforeLoss } from './pressureBeforeLoss.ts'
import { bendAngle, bendCount, bendLoss as heads, bendRadius, ductBore, ductRun, gasDensity, gasFlow, gasPressure, gasSpeed, lossCoefficient, pressureLoss, turbineInletTemperature } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 'exhaust-pipe-loss', title: 'Pressure loss of exhaust pipe and silencer', theme: 'turbo', article: 'the-turbine-and-back-pressure', cautions: ['exhaust-gas', 'noise', 'emission-law', 'model-only'],
  asks: 'What pressure stands behind the turbine with this pipe and this silencer?',
  in: {
    flow: at.exhaustFlow, temperature: free(turbineInletTemperature, degC(750), 'Gas temperature in the pipe'), outside: siteAirPressure,
    bore: free(ductBore, mm(76)), length: free(ductRun, 3.5), bends: free(bendCount, 5), angle: free(bendAngle, deg(60)), radius: free(bendRadius, 1.5), roughness: free(wallRoughness, um(50)),
    others: free(heads, 1, 'Other losses in velocity heads: 1 for the open end'),
    measured: free(pressureLoss, kPa(8), 'Pressure loss of the silencer at its rating'), measuredFlow: free(gasFlow, 0.25, 'Flow of that rating'), measuredDensity: free(gasDensity, 0.6, 'Gas density of that rating'),
  },
  out: { loss: pressureLoss, after: role(gasPressure, 'p_4', 'Pressure after the turbine'), coefficient: lossCoefficient, pipe: role(lossCoefficient, 'K_p', 'Loss coefficient of the pipe alone'), speed: gasSpeed },
  curve: ['bore', 'loss'],
  answer({ flow, temperature, outside, bore, length, bends, angle, radius, roughness, others, measured, measuredFlow, measuredDensity }) {
    const density = densityAt({ pressure: outside, temperature })
    const friction = churchillFriction({ reynolds: ductReynolds({ flow, bore, viscosity: airViscosity({ temperature }) }), relativeRoughness: ductRoughness({ roughness, bore }) })
    const pipe = ductCoefficient({ bore, length, friction, bends, bend: bendLoss({ friction, angle, radius }), others })
    const coefficient = coefficientSum({ first: pipe, second: lossCoefficientFrom({ loss: measured, flow: measuredFlow, density: measuredDensity }) })
    const loss = flowPressureLoss({ coefficient, flow, density })
    return { loss, after: pressureBeforeLoss({ after: outside, loss }), coefficient, pipe, speed: ductSpeed({ flow, density, bore }) }
  },
  says: ({ loss }) => loss > 60e3
    ? '{flow} of gas at {temperature} would cost {loss}: at {speed} in the pipe this is past what the model can tell, and far more than a turbine should stand against. A larger pipe first.'
    : '{flow} of gas at {temperature} costs {loss}: {after} stands behind the turbine. For the sheet pipe and silencer have a loss coefficient of {coefficient}, of which the pipe makes {pipe}. Hot gas costs more than cold: the same mass moves faster.',
  leavesOut: 'Gas that cools along the pipe, a catalyst, pulses, and noise: the quieter silencer usually costs more.',
})
