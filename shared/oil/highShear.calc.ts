import { calculation, NoAnswer, optional } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { density15, grade, highShear, rotorDiameter } from './fields.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { filmShearRate } from './filmShearRate.ts'
import { gradeLimits } from './gradeLimits.ts'
import { highShearShareOf } from './highShearShareOf.ts'
import { at } from './point.ts'
import { dynamicViscosity, highShearShare, highShearViscosity, shearRate } from './quantities.ts'
import { rotorTurning } from './rotorTurning.ts'
import { slidingSpeed } from './slidingSpeed.ts'
import { viscosityAt150 } from './viscosityAt150.ts'

export default calculation({
  id: 'high-shear', title: 'High-shear viscosity', theme: 'oil',
  asks: 'How much of its viscosity does the oil keep when a film shears it, and how fast does mine shear it?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'model-only'],
  in: {
    grade, viscosity40: at.viscosity40, viscosity100: at.viscosity100, highShear: optional(highShear), density15, temperature: at.oilTemperature,
    speed: engine.speed, diameter: rotorDiameter, film: at.rotorInertiaFilm,
  },
  out: {
    lowShear: role(dynamicViscosity, 'η_150', 'Low-shear viscosity at 150 °C'), used: role(highShearViscosity, 'η_HS', 'High-shear viscosity at 150 °C that is used'), share: highShearShare,
    here: role(dynamicViscosity, 'η_f', 'Film viscosity at this temperature'), rate: shearRate,
  },
  curve: ['temperature', 'here'],
  answer({ grade, viscosity40, viscosity100, highShear, density15, temperature, speed, diameter, film }) {
    if (!(viscosity100 < viscosity40)) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
    const used = highShear ?? gradeLimits({ grade }).highShear
    if (Number.isNaN(used)) throw new NoAnswer('oil grade', `${grade} promises nothing at high shear: enter the figure of the data sheet.`)
    const lowShear = viscosityAt150({ viscosity40, viscosity100, density15 })
    const share = highShearShareOf({ highShear: used, lowShear })
    return {
      lowShear, used, share, here: filmAtTemperature({ viscosity40, viscosity100, density15, share, temperature }),
      rate: filmShearRate({ diameter, speed: slidingSpeed({ journal: speed, shell: rotorTurning({ speed }) }), film }),
    }
  },
  says: ({ highShear, share }) => `Hot and still it would have {lowShear} at 150 °C; sheared it keeps {used}, ${share < 1 ? '{share} of that' : 'all of it'}${highShear === null ? ', the least its grade allows' : ''}. At {temperature} the film has {here}; the rotor bearing shears it at {rate}, the test at a million per second.`,
  leavesOut: 'What the oil regains where the film is thicker, and thickener that is torn for good.',
})
