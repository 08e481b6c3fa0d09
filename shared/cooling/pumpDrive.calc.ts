import { calculation, free } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { degC, kPa, mm } from '../quantity/si.ts'
import { beltSpeedAt } from './beltSpeedAt.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantVapourPressure } from './coolantVapourPressure.ts'
import { drivenSpeed } from './drivenSpeed.ts'
import { capPressure, glycol, pumpFlow, pumpSpeed } from './fields.ts'
import { glycolMassShare } from './glycolMassShare.ts'
import { pressureUnderCap } from './pressureUnderCap.ts'
import { pumpFlowAt } from './pumpFlowAt.ts'
import { beltSpeedOf, coolantTemperatureOf, inletLossOf, pulleyDiameter, pumpShaftSpeed, suctionNumber, suctionPressure } from './quantities.ts'
import { suctionNeeded } from './suctionNeeded.ts'
import { suctionReserve } from './suctionReserve.ts'
import { waterBoilingPressure } from './waterBoilingPressure.ts'
import { waterMoleShare } from './waterMoleShare.ts'

export default calculation({
  id: 'pump-drive',
  title: 'Pulleys, belt and cavitation of the pump',
  theme: 'cooling',
  asks: 'How fast do pump and belt run at this shaft speed, and does the pump still draw liquid?',
  article: 'where-the-heat-goes',
  cautions: ['hot-pressurised-coolant', 'rotating-burst', 'model-only'],
  in: {
    speed: engine.speed, driving: free(pulleyDiameter, mm(110), 'Pulley on the shaft'), driven: free(pulleyDiameter, mm(130), 'Pulley on the pump'), rated: pumpFlow, ratedSpeed: pumpSpeed,
    temperature: free(coolantTemperatureOf, degC(90), 'Coolant at the pump’s inlet'), glycol, outside: siteAirPressure, cap: capPressure, loss: free(inletLossOf, kPa(15)), number: free(suctionNumber, 3),
  },
  out: { pump: pumpShaftSpeed, belt: beltSpeedOf, above: role(suctionPressure, 'Δp_s', 'Above boiling at the inlet'), needed: role(suctionPressure, 'Δp_n', 'Needed above boiling') },
  curve: ['speed', 'needed'],
  answer({ speed, driving, driven, rated, ratedSpeed, temperature, glycol, outside, cap, loss, number }) {
    const pump = drivenSpeed({ speed, driving, driven })
    const boiling = coolantVapourPressure({ water: waterMoleShare({ glycol: glycolMassShare({ glycol }) }), saturation: waterBoilingPressure({ temperature }) })
    return {
      pump, belt: beltSpeedAt({ speed, driving }),
      above: suctionReserve({ system: pressureUnderCap({ outside, cap }), loss, boiling }),
      needed: suctionNeeded({ density: coolantDensity({ temperature, glycol }), speed: pump, flow: pumpFlowAt({ rated, speed, ratedSpeed }), number }),
    }
  },
  says: ({ above, needed }) => above < needed
    ? 'At {speed} the pump turns {pump}, the belt runs {belt}. The inlet stands {above} above boiling and the pump needs {needed}: it cavitates, and flow no longer follows speed. A smaller pulley on the shaft helps.'
    : 'At {speed} the pump turns {pump}, the belt runs {belt}. The inlet stands {above} above boiling; the pump needs {needed}.',
  leavesOut: 'A system that is still cold holds no cap pressure yet; slip of the belt; air drawn in at a seal.',
})
