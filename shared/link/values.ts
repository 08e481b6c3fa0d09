import { isQuantity, type CompressorMap, type Points, type Shape } from '../quantity/quantity.ts'
import { damaged } from './fault.ts'
import { type Reader, type Writer } from './bytes.ts'
import { readNumbers, writeNumbers } from './numbers.ts'

const mostPoints = 200
const mostLines = 30

/** One value by its shape. A name that a map carries stays behind: a link brings numbers and listed choices. */
export function writeValue(to: Writer, value: unknown, shape: Shape): void {
  if (isQuantity(shape)) return writeNumbers(to, [value as number], shape.kind)
  if (shape.kind === 'choice' || shape.kind === 'grade') return to.text(value as string)
  if (shape.kind === 'curve') {
    const { x, y } = value as Points
    to.whole(x.length)
    writeNumbers(to, x, shape.x.kind)
    return writeNumbers(to, y, shape.y.kind)
  }
  const map = value as CompressorMap
  to.byte(map.estimate ? 1 : 0)
  writeNumbers(to, [map.referenceTemperature], 'temperature')
  writeNumbers(to, [map.referencePressure], 'pressure')
  to.whole(map.lines.length)
  writeNumbers(to, map.lines.map((line) => line.speed), 'shaftSpeed')
  for (const line of map.lines) {
    to.whole(line.flow.length)
    writeNumbers(to, line.flow, 'massFlow')
    writeNumbers(to, line.ratio, 'number')
    writeNumbers(to, line.efficiency, 'share')
  }
}

/** What the bytes say; whether it makes sense is weighed afterwards, as it is for a file. */
export function readValueOf(from: Reader, shape: Shape): unknown {
  if (isQuantity(shape)) return readNumbers(from, 1, shape.kind)[0]
  if (shape.kind === 'choice' || shape.kind === 'grade') return from.text(80)
  if (shape.kind === 'curve') {
    const count = from.whole(mostPoints)
    return { x: readNumbers(from, count, shape.x.kind), y: readNumbers(from, count, shape.y.kind) }
  }
  const estimate = from.byte()
  if (estimate > 1) throw damaged()
  const [referenceTemperature] = readNumbers(from, 1, 'temperature')
  const [referencePressure] = readNumbers(from, 1, 'pressure')
  const speeds = readNumbers(from, from.whole(mostLines), 'shaftSpeed')
  const lines = speeds.map((speed) => {
    const count = from.whole(mostPoints)
    return { speed, flow: readNumbers(from, count, 'massFlow'), ratio: readNumbers(from, count, 'number'), efficiency: readNumbers(from, count, 'share') }
  })
  return { name: 'Map from a link', referenceTemperature, referencePressure, lines, ...(estimate === 1 && { estimate: true }) }
}
