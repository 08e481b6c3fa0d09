import type { CompressorMap, Curve, MapShape, Points } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, shownUnit, type System } from '@trochoid/compute/quantity/write.ts'

const rpm = Math.PI / 30
const digits = (n: number): string => String(Number(n.toPrecision(6)))

export function headOf(shape: Curve | MapShape, system: System): string {
  if (shape.kind === 'map') return 'corrected speed rpm, corrected flow g/s, pressure ratio, efficiency %; first two lines: reference temperature °C, reference pressure kPa'
  return `${shape.x.name} ${shownUnit(shape.x, system)}, ${shape.y.name} ${shownUnit(shape.y, system)}`.replace(/ 1(?=,|$)/g, '')
}
export const curveText = ({ x, y }: Points, shape: Curve, system: System): string =>
  x.map((value, i) => `${digits(inUnit(value, shape.x, shownUnit(shape.x, system)))}; ${digits(inUnit(y[i]!, shape.y, shownUnit(shape.y, system)))}`).join('\n')

export const mapText = (map: CompressorMap): string => [
  digits(map.referenceTemperature - 273.15), digits(map.referencePressure / 1000),
  ...map.lines.flatMap((line) => line.flow.map((flow, i) => [line.speed / rpm, flow * 1000, line.ratio[i]!, line.efficiency[i]! * 100].map(digits).join('; '))),
].join('\n')
