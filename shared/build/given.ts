import { type CompressorMap, type Points } from '../quantity/quantity.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'
import { describedDisplacement } from '../engine/describedDisplacement.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { dryAirPressure } from '../engine/dryAirPressure.ts'
import { ottoEfficiency } from '../engine/ottoEfficiency.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { valveFlowArea } from '../boost/valveFlowArea.ts'
import { areaInSeries } from '../engine/areaInSeries.ts'
import { plateAngleAt } from '../engine/plateAngleAt.ts'
import { throttleArea } from '../engine/throttleArea.ts'
import { coolerAirFrom } from './coolerAir.ts'
import { capacityOfAll } from '../boost/capacityOfAll.ts'
import { burnedHeat } from '../fuel/burnedHeat.ts'
import { burnedStoichiometry } from '../fuel/burnedStoichiometry.ts'
import { oilShareBurned } from '../fuel/oilShareBurned.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { type FieldValues } from './fieldValues.ts'

/** What the coupled solve takes from the sheet: looked up, converted and interpolated once per build. SI throughout. */
export type Given = ReturnType<typeof givenFrom>

/** Fields without which the engine and its turbocharger cannot be solved at all. */
export const corePaths = [
  'engine.throttle.position', 'engine.throttle.bore', 'engine.throttle.shaft', 'engine.throttle.closedAngle', 'engine.throttle.discharge',
  'site.airPressure', 'site.airTemperature', 'site.humidity', 'engine.describedBy', 'engine.rotors', 'engine.compressionRatio', 'engine.speedLimit', 'engine.veCurve',
  'engine.veBackPressureRatio', 'engine.overlapFactor', 'engine.quality', 'engine.frictionConstant', 'engine.frictionSlope', 'engine.lambdaCurve',
  'fuel.ethanolShare', 'fuel.petrol.density', 'fuel.petrol.hydrogenToCarbon', 'fuel.petrol.heatingValue',
  'cooling.coolantShare', 'cooling.oilShare', 'cooling.surfaceShare', 'cooling.exhaustBand',
  'boost.target', 'boost.compressorMap', 'boost.turbos', 'boost.inletLoss', 'boost.coolerLoss', 'boost.coolerRatedFlow', 'boost.coolerRatedEffectiveness', 'boost.mechanicalEfficiency',
  'boost.turbineCapacity', 'boost.turbineEfficiency', 'boost.exhaustLoss', 'boost.wastegate.diameter', 'boost.wastegate.number', 'boost.wastegate.discharge', 'idle.speed', 'idle.manifoldPressure', 'idle.lambda', 'idle.chargeTemperature', 'idle.volumetricEfficiency',
] as const
const geometryPaths = ['engine.generatingRadius', 'engine.eccentricity', 'engine.width', 'engine.shift'] as const

/** Paths of the core that this sheet leaves open. */
export function coreMissing(fields: FieldValues): readonly string[] {
  const size = fields.get('engine.describedBy') === 'displacement' ? (['engine.displacement'] as const) : geometryPaths
  return [...corePaths, ...size].filter((path) => fields.get(path) === null || fields.get(path) === undefined)
}

export function givenFrom(fields: FieldValues) {
  const number = (path: (typeof corePaths)[number] | (typeof geometryPaths)[number] | 'engine.displacement'): number => fields.get(path) as number
  const airPressure = number('site.airPressure')
  const airTemperature = number('site.airTemperature')
  const moisture = vapourShare({ vapourPressure: vapourPressure({ humidity: number('site.humidity'), saturation: saturationPressure({ temperature: airTemperature }) }), pressure: airPressure })
  const compressionRatio = number('engine.compressionRatio')
  const known = (path: string): number => (fields.get(path) as number | null | undefined) ?? 0
  // Oil in the fuel is burned with it. Not known is none: its whole effect is less than a sensor tells apart.
  const burned = {
    ethanolShare: number('fuel.ethanolShare'), petrolDensity: number('fuel.petrol.density'),
    oilShare: oilShareBurned({ by: fields.get('oil.sealOiling') as 'metered' | 'premixed' | 'both', share: known('fuel.premix.share') }), oilDensity: known('fuel.premix.density'),
  }
  return {
    airPressure, airTemperature,
    /** Mole share of water vapour in the air outside: it stays the same through compressor and cooler. */
    vapourShare: moisture,
    outsideDensity: gasDensity({ pressure: dryAirPressure({ pressure: airPressure, share: moisture }), temperature: airTemperature }),
    displacement: describedDisplacement({
      describedBy: fields.get('engine.describedBy') as 'geometry' | 'displacement', generatingRadius: number('engine.generatingRadius'), eccentricity: number('engine.eccentricity'),
      width: number('engine.width'), shift: number('engine.shift'), stated: number('engine.displacement'),
    }),
    rotors: number('engine.rotors'),
    compressionRatio,
    throttle: throttleFrom(number),
    ve: over(fields.get('engine.veCurve') as Points),
    veReferenceRatio: number('engine.veBackPressureRatio'),
    overlapFactor: number('engine.overlapFactor'),
    ottoEfficiency: ottoEfficiency({ compressionRatio, ratioOfSpecificHeats: airHeatRatio.value }),
    quality: number('engine.quality'),
    frictionConstant: number('engine.frictionConstant'),
    frictionSlope: number('engine.frictionSlope'),
    lambda: over(fields.get('engine.lambdaCurve') as Points),
    stoichiometricRatio: burnedStoichiometry({ ...burned, petrolHydrogen: number('fuel.petrol.hydrogenToCarbon') }),
    heatingValue: burnedHeat({ ...burned, petrolHeat: number('fuel.petrol.heatingValue'), oilHeat: known('fuel.premix.heatingValue') }),
    coolantShare: number('cooling.coolantShare'),
    oilShare: number('cooling.oilShare'),
    surfaceShare: number('cooling.surfaceShare'),
    exhaustBand: number('cooling.exhaustBand'),
    /** Wanted boost, gauge, over shaft speed. */
    target: over(fields.get('boost.target') as Points),
    map: fields.get('boost.compressorMap') as CompressorMap,
    inletLoss: number('boost.inletLoss'),
    coolerLoss: number('boost.coolerLoss'),
    coolerRatedFlow: number('boost.coolerRatedFlow'),
    coolerRatedEffectiveness: number('boost.coolerRatedEffectiveness'),
    coolerAir: coolerAirFrom(fields),
    mechanicalEfficiency: number('boost.mechanicalEfficiency'),
    turbos: number('boost.turbos'),
    /** Of all turbines together. */
    turbineCapacity: capacityOfAll({ each: number('boost.turbineCapacity'), turbos: number('boost.turbos') }),
    turbineEfficiency: number('boost.turbineEfficiency'),
    exhaustLoss: number('boost.exhaustLoss'),
    wastegate: { area: valveFlowArea({ diameter: number('boost.wastegate.diameter'), number: number('boost.wastegate.number') }), discharge: number('boost.wastegate.discharge') },
    actuator: actuatorFrom(fields),
    idle: {
      speed: number('idle.speed'), manifold: number('idle.manifoldPressure'), lambda: number('idle.lambda'), charge: number('idle.chargeTemperature'), ve: number('idle.volumetricEfficiency'),
    },
  }
}

/** What a throttle that is not fully open adds; nothing where it is. */
function throttleFrom(number: (path: 'engine.throttle.position' | 'engine.throttle.bore' | 'engine.throttle.shaft' | 'engine.throttle.closedAngle' | 'engine.throttle.discharge') => number): { readonly area: number; readonly discharge: number } | null {
  const position = number('engine.throttle.position')
  if (position >= 1) return null
  const plate = { bore: number('engine.throttle.bore'), shaft: number('engine.throttle.shaft'), closed: number('engine.throttle.closedAngle') }
  const areaAt = (share: number): number => throttleArea({ ...plate, angle: plateAngleAt({ position: share, closed: plate.closed }) })
  const [area, open] = [areaAt(position), areaAt(1)]
  return area < open ? { area: areaInSeries({ area, open }), discharge: number('engine.throttle.discharge') } : null
}

/** The actuator by its bench pressures, where both are known: without them boost is taken to follow its target. */
function actuatorFrom(fields: FieldValues) {
  const paths = ['boost.actuator.firstMovement', 'boost.actuator.fullTravel', 'boost.actuator.diaphragmArea', 'boost.actuator.leverRatio', 'boost.actuator.controlShare', 'boost.wastegate.diameter'] as const
  const [firstMovement, fullTravel, diaphragmArea, leverRatio, kept, diameter] = paths.map((path) => fields.get(path) as number | null)
  return firstMovement == null || fullTravel == null || diaphragmArea == null || leverRatio == null || kept == null || diameter == null
    ? null : { firstMovement, fullTravel, diaphragmArea, leverRatio, kept, diameter }
}

/** The curve through the points, monotone between them and level beyond its ends: no curve is trusted outside what was given. */
function over({ x, y }: Points): (at: number) => number {
  const slopes = monotoneSlopes(x, y)
  const first = x[0]!
  const last = x[x.length - 1]!
  return (at) => hermiteAt(x, y, slopes, Math.min(Math.max(at, first), last))
}
