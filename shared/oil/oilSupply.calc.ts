import { calculation, NoAnswer, optional } from '../calculation/calculation.ts'
import { engineRotors } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { balancedPressure } from './balancedPressure.ts'
import { dropToSump } from './dropToSump.ts'
import { engineLeakage } from './engineLeakage.ts'
import { density15, hotPressure, hotPressureSpeed, hotPressureTemperature, jetCoefficient, mainClearance, mainDiameter, mainLength, pumpPerTurn, pumpRatedPressure, pumpRatedSpeed, pumpRatio, pumpShare, relief, rotorClearance, rotorHole, rotorJet, rotorJets, rotorLength, turboFeed } from './fields.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { grooveLeakage } from './grooveLeakage.ts'
import { holeLeakage } from './holeLeakage.ts'
import { jetFlow } from './jetFlow.ts'
import { landOf } from './landOf.ts'
import { leakageByReading } from './leakageByReading.ts'
import { leakageFlow } from './leakageFlow.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { openAreaOf } from './openAreaOf.ts'
import { at } from './point.ts'
import { pumpDelivery } from './pumpDelivery.ts'
import { pumpSlip } from './pumpSlip.ts'
import { oilFlow, oilPressure } from './quantities.ts'
import { radialFromDiametral } from './radialFromDiametral.ts'
import { relievedPressure } from './relievedPressure.ts'
import { supplyFlow } from './supplyFlow.ts'

export default calculation({
  id: 'oil-supply', title: 'Oil pressure over speed', theme: 'oil',
  asks: 'What pressure does the pump hold against clearances, jets and relief valve?',
  article: 'flow-and-pressure', cautions: ['hot-oil', 'model-only'],
  in: {
    speed: engine.speed, temperature: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, share: at.highShearShare, density15, rotors: engineRotors,
    perTurn: pumpPerTurn, ratio: pumpRatio, efficiency: pumpShare, ratedPressure: pumpRatedPressure, ratedSpeed: pumpRatedSpeed, relief,
    mainDiameter, mainLength, mainDiametral: mainClearance, rotorLength, rotorDiametral: rotorClearance, hole: rotorHole,
    jets: rotorJets, jet: rotorJet, restrictor: turboFeed, coefficient: jetCoefficient, reading: optional(hotPressure), readingSpeed: hotPressureSpeed, readingTemperature: hotPressureTemperature,
  },
  out: { pressure: at.gaugePressure, taken: at.oilFlow, given: oilFlow, unrelieved: oilPressure },
  curve: ['speed', 'pressure'],
  answer({
    speed, temperature, viscosity40, viscosity100, share, density15, rotors, perTurn, ratio, efficiency, ratedPressure, ratedSpeed, relief, mainDiameter, mainLength, mainDiametral, rotorLength, rotorDiametral, hole,
    jets, jet, restrictor, coefficient, reading, readingSpeed, readingTemperature,
  }) {
    if (!(viscosity100 < viscosity40)) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
    const oilAt = (warm: number) => ({ viscosity: filmAtTemperature({ viscosity40, viscosity100, density15, share, temperature: warm }), density: oilDensityAt({ density15, temperature: warm }) })
    const { viscosity, density } = oilAt(temperature)
    // The journals are taken as running centred: offset ones leak more.
    const main = grooveLeakage({ diameter: mainDiameter, clearance: radialFromDiametral({ diametral: mainDiametral }), land: landOf({ length: mainLength }), eccentricity: 0 })
    const rotor = holeLeakage({ clearance: radialFromDiametral({ diametral: rotorDiametral }), hole, length: rotorLength })
    const ideal = (n: number): number => pumpDelivery({ perTurn, ratio, speed: n, efficiency: 1 })
    const slip = pumpSlip({ ideal: ideal(ratedSpeed), efficiency, viscosity, pressure: ratedPressure })
    const area = openAreaOf({ jets, jet, restrictor })
    const given = ideal(speed)
    // A reading below the relief setting tells how much the gaps pass; one at or above it tells where the valve really opens.
    const read = reading !== null && reading < relief
    const leakage = read ? leakageByReading({ ideal: ideal(readingSpeed), reading, ...oilAt(readingTemperature), area, coefficient }) : engineLeakage({ main, rotor, slip, rotors })
    const unrelieved = balancedPressure({ ideal: given, leakage, viscosity, area, coefficient, density })
    const pressure = relievedPressure({ pressure: unrelieved, setting: reading !== null && !read ? reading : relief })
    const gaps = leakageFlow({ factor: engineLeakage({ main, rotor, slip: 0, rotors }), drop: dropToSump({ pressure }), viscosity })
    const holes = jetFlow({ area, coefficient, drop: dropToSump({ pressure }), density })
    return { pressure, taken: supplyFlow({ gaps, holes }), given, unrelieved }
  },
  says: ({ reading, unrelieved, relief }) => `At {speed} the gallery holds {pressure}; bearings, jets and turbocharger take {taken} of the pump’s {given}${unrelieved > relief ? ', the relief valve returns the rest' : ''}.${reading === null ? ' One hot reading of a gauge would replace this estimate of the leakage.' : ''}`,
  leavesOut: 'Gears, side faces, chain jets and worn spots that also pass oil; air in the oil; cold oil.',
})
