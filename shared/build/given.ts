import { type CompressorMap } from '../quantity/quantity.ts'

/** What the coupled solve takes from the sheet: looked up, converted and interpolated once per build. SI throughout. */
export type Given = {
  readonly airPressure: number
  readonly airTemperature: number
  /** Mole share of water vapour in the air outside: it stays the same through compressor and cooler. */
  readonly vapourShare: number
  readonly outsideDensity: number
  readonly displacement: number
  readonly rotors: number
  readonly compressionRatio: number
  readonly ve: (speed: number) => number
  readonly veReferenceRatio: number
  readonly overlapFactor: number
  readonly ottoEfficiency: number
  readonly quality: number
  readonly frictionConstant: number
  readonly frictionSlope: number
  readonly lambda: (manifold: number) => number
  readonly stoichiometricRatio: number
  readonly heatingValue: number
  readonly coolantShare: number
  readonly oilShare: number
  readonly surfaceShare: number
  readonly exhaustBand: number
  /** Wanted boost, gauge, over shaft speed. */
  readonly target: (speed: number) => number
  readonly map: CompressorMap
  readonly inletLoss: number
  readonly coolerLoss: number
  readonly coolerRatedFlow: number
  readonly coolerRatedEffectiveness: number
  readonly mechanicalEfficiency: number
  readonly turbineCapacity: number
  readonly turbineEfficiency: number
  readonly exhaustLoss: number
}
