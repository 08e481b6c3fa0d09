import { fieldValues } from '../build/fieldValues.ts'
import { solveBuild } from '../build/solve.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { stoichiometricOf } from '../log/check.ts'
import { circuits } from '../session/circuits.ts'
import { carFrom, drivenLap, timeBetween } from '../session/driven.ts'
import { lapFromLog } from '../session/fromLog.ts'
import { sessionOf } from '../session/session.ts'
import { BadInput } from './badInput.ts'
import { logFrom } from './logFrom.ts'
import { sheetFrom } from './sheetFrom.ts'
import { type Workshop } from './workshop.ts'

/** A build driven over an invented circuit, or over a logged drive, for so many minutes. */
export async function sessionCommand(shop: Workshop, args: readonly string[], readText: (path: string) => string, readBytes: (path: string) => Uint8Array) {
  const [file, ...options] = args
  if (!file) throw new BadInput('file', 'Name a build file.')
  const sheet = await sheetFrom(file, shop, readText)
  let over = 'quarry', minutes = 30
  let start: 'cold' | 'warm' = 'warm'
  for (let i = 0; i < options.length; i += 2) {
    const value = options[i + 1]
    if (options[i] === '--over' && value !== undefined) over = value
    else if (options[i] === '--minutes' && value !== undefined && Number(value) > 0 && Number(value) <= 180) minutes = Number(value)
    else if (options[i] === '--start' && (value === 'cold' || value === 'warm')) start = value
    else throw new BadInput(options[i] ?? '', `Options are --over ${Object.keys(circuits).join(' or ')} or a log, --minutes up to 180, and --start cold or warm.`)
  }
  try {
    const fields = fieldValues(sheet)
    const solved = solveBuild(sheet)
    const car = carFrom(fields, solved.points)
    const lap = Object.hasOwn(circuits, over) ? drivenLap(circuits[over as keyof typeof circuits], car) : logged(over)
    return { ...sessionOf(fields, solved, { lap, minutes, start }), pieces: lap.pieces, from100to200: timeBetween(car, 100 / 3.6, 200 / 3.6) }
  } catch (error) { if (error instanceof NoAnswer) throw new BadInput(error.link, error.message); throw error }

  function logged(path: string) {
    let bytes: Uint8Array
    try { bytes = readBytes(path) } catch { throw new BadInput('over', `${path} cannot be read. Give a log, or ${Object.keys(circuits).join(', ')}.`) }
    const drive = lapFromLog(logFrom(bytes, [], stoichiometricOf(sheet)).log, path)
    if (!drive.ok) throw new BadInput('over', drive.says)
    return drive.lap
  }
}
