import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { deg, degC, lPerMin, mm } from '../quantity/si.ts'
import { airConductivityAt } from './airConductivityAt.ts'
import { airShareOf } from './airShareOf.ts'
import { airSideConductance } from './airSideConductance.ts'
import { airViscosityAt } from './airViscosityAt.ts'
import { conductanceInSeries } from './conductanceInSeries.ts'
import { coolantConductivity } from './coolantConductivity.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantSideConductance } from './coolantSideConductance.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { coolantViscosity } from './coolantViscosity.ts'
import { coreOpenArea } from './coreOpenArea.ts'
import { glycol } from './fields.ts'
import { filmFromColburn } from './filmFromColburn.ts'
import { finEfficiency } from './finEfficiency.ts'
import { finSurface } from './finSurface.ts'
import { heatOfRadiator } from './heatOfRadiator.ts'
import { louvreColburn } from './louvreColburn.ts'
import { louvreReynoldsOf } from './louvreReynoldsOf.ts'
import {
  airSideShare, coolantFlowOf, coolantTemperatureOf, coolerConductance, coreAir, coreAirTemperatureOf, coreDepth, coreFilm, coreWidth, finEfficiencyOf, finPitch, finThickness, heatFlow, louvreAngle, louvreLength, louvrePitch,
  louvreReynolds, spacerConductivityOf, tubePitch, tubeThickness, tubeWall,
} from './quantities.ts'
import { tubeFilm } from './tubeFilm.ts'
import { tubeHydraulic } from './tubeHydraulic.ts'
import { tubeReynoldsOf } from './tubeReynoldsOf.ts'
import { tubeSurface } from './tubeSurface.ts'

/** A radiator from its geometry: what a rated point would say. */
export default calculation({
  id: 'louvred-core',
  title: 'Radiator from its core’s geometry',
  theme: 'cooling',
  asks: 'No rated point to hand: what should a louvred core of this size carry?',
  article: 'where-the-heat-goes',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    width: free(coreWidth, 0.38, 'Width across the tubes'), height: free(coreWidth, 0.6, 'Length of the tubes'), depth: free(coreDepth, mm(42)), tubePitch: free(tubePitch, mm(10)), tube: free(tubeThickness, mm(2)), wall: free(tubeWall, mm(0.3)),
    finPitch: free(finPitch, mm(1.8)), fin: free(finThickness, mm(0.1)), louvre: free(louvrePitch, mm(1.3)), angle: free(louvreAngle, deg(27)), length: free(louvreLength, mm(6.5)), metal: free(spacerConductivityOf, 200, 'Conductivity of the fins'),
    air: free(coreAir, 2), airTemperature: free(coreAirTemperatureOf, degC(35)), coolant: free(coolantFlowOf, lPerMin(120)), coolantTemperature: free(coolantTemperatureOf, degC(95)), glycol,
  },
  out: {
    conductance: coolerConductance, heat: heatFlow, share: airSideShare, airFilm: role(coreFilm, 'h_a', 'Heat transfer on the air’s side'), efficiency: finEfficiencyOf, reynolds: louvreReynolds,
  },
  curve: ['air', 'heat'],
  answer({ width, height, depth, tubePitch, tube, wall, finPitch, fin, louvre, angle, length, metal, air, airTemperature, coolant, coolantTemperature: temperature, glycol }) {
    if (!(tube < tubePitch && fin < finPitch && 2 * wall < tube && 2 * wall < depth)) throw new NoAnswer('core', 'Tubes have to be thinner than their distance, fins than theirs, and walls than half a tube.')
    if (!(length < tubePitch)) throw new NoAnswer('core', 'A louvre has to be shorter than the distance from tube to tube.')
    const face = { width, height }
    const viscosity = airViscosityAt({ temperature: airTemperature })
    const area = coreOpenArea({ ...face, tubePitch, tube, finPitch, fin })
    const reynolds = louvreReynoldsOf({ air, area, pitch: louvre, viscosity })
    const airFilm = filmFromColburn({ factor: louvreColburn({ reynolds, pitch: louvre, angle, length, finPitch, fin, depth, tubePitch, tube }), air, area, viscosity, conductivity: airConductivityAt({ temperature: airTemperature }) })
    const efficiency = finEfficiency({ film: airFilm, conductivity: metal, fin, tubePitch, tube })
    const airSide = airSideConductance({ film: airFilm, bare: tubeSurface({ ...face, depth, tubePitch, finPitch, fin }), fins: finSurface({ ...face, depth, tubePitch, tube, finPitch }), efficiency })
    const mixture = { temperature, glycol }
    const stream = { viscosity: coolantViscosity(mixture), conductivity: coolantConductivity(mixture), specificHeat: coolantSpecificHeat(mixture) }
    const film = tubeFilm({ ...stream, reynolds: tubeReynoldsOf({ flow: coolant, density: coolantDensity(mixture), viscosity: stream.viscosity, width, tubePitch, tube, wall, depth }), diameter: tubeHydraulic({ tube, wall, depth }) })
    const conductance = conductanceInSeries({ air: airSide, coolant: coolantSideConductance({ film, ...face, tubePitch, tube, wall, depth }) })
    const share = airShareOf({ whole: conductance, air: airSide })
    const heat = heatOfRadiator({ temperature, coolant, glycol, air, airTemperature, conductance, airShare: share, ratedAir: air, airExponent: 0, ratedCoolant: coolant, coolantExponent: 0 })
    return { conductance, heat, share, airFilm, efficiency, reynolds }
  },
  says: () => 'At these flows the core should carry {heat}, a conductance of {conductance}, {share} of its resistance on the air’s side. The correlation tells nine cores in ten within 15 %: a rated point beats it.',
  leavesOut: 'Wall and fouling, bypass round the core, two passes, dimpled tubes, and air that arrives unevenly.',
})
