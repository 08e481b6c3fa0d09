import { type CompressorMap } from '../quantity/quantity.ts'
import { wheelFlows } from './wheelFlows.ts'
import { wheelLine } from './wheelLine.ts'

/** A wheel by its diameters, and the highest tip speed up to which its map is drawn. */
export type Wheel = { readonly name: string; readonly inducer: number; readonly exducer: number; readonly topTipSpeed: number; readonly throat?: number }

/** How much of an inducer’s face is throat, by wheels whose flow is known: see the checks. */
export const usualThroat = 0.53
const referenceTemperature = 298.15
const referencePressure = 1e5
const shares = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]
const places = [0, 0.2, 0.4, 0.58, 0.74, 0.86, 0.94, 1]
const rounded = (x: number, digits: number): number => Number(x.toFixed(digits))

/** A map estimated from a wheel’s size alone: for a first look, never for a purchase. */
export function genericMap({ name, inducer, exducer, topTipSpeed, throat = usualThroat }: Wheel): CompressorMap {
  const reference = { temperature: referenceTemperature, pressure: referencePressure }
  return {
    name, referenceTemperature, referencePressure, estimate: true,
    lines: shares.map((share) => {
      const speed = (share * topTipSpeed * 2) / exducer
      const { surge, right } = wheelFlows({ ...reference, inducer, exducer, throat, speed })
      const at = places.map((place) => wheelLine({ exducer, speed, temperature: referenceTemperature, surge, right, place }))
      return { speed, flow: places.map((place) => rounded(surge + (right - surge) * place, 4)), ratio: at.map((p) => rounded(p.ratio, 3)), efficiency: at.map((p) => rounded(p.efficiency, 3)) }
    }),
  }
}
