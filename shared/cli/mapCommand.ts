import { genericMap } from '../boost/genericMap.ts'
import { mapFaults } from '../boost/mapFaults.ts'
import { mapFile, readMapFile } from '../boost/mapFile.ts'
import { exducer, gasPressure, gasTemperature, inducer, tipSpeed } from '../boost/quantities.ts'
import { readValue } from '../calculation/inputs.ts'
import { readArithmetic } from '../quantity/arithmetic.ts'
import { BadInput } from './badInput.ts'

const asked = { '--temperature': gasTemperature, '--pressure': gasPressure, '--exducer': exducer, '--inducer': inducer, '--tip-speed': tipSpeed } as const
type Option = keyof typeof asked

/** Reads the table of a compressor map and says what is wrong with it; or estimates a map from a wheel’s size. */
export function mapCommand(args: readonly string[], readText: (path: string) => string) {
  const file = args[0]?.startsWith('--') ? undefined : args[0]
  const said: Partial<Record<Option, number>> = {}
  for (let i = file === undefined ? 0 : 1; i < args.length; i += 2) {
    const [option, value] = [args[i]!, args[i + 1]]
    if (!Object.hasOwn(asked, option) || value === undefined) throw new BadInput(option, 'map <table.csv> [--temperature "25 °C"] [--pressure "100 kPa abs"], or map --inducer "58 mm" --exducer "77 mm" [--tip-speed "500 m/s"].')
    const read = readValue(value, asked[option as Option], readArithmetic)
    if (!read.ok) throw new BadInput(option, read.says)
    said[option as Option] = read.value as number
  }
  if (file === undefined) {
    const { '--inducer': d1, '--exducer': d2, '--tip-speed': topTipSpeed = 500 } = said
    if (d1 === undefined || d2 === undefined || !(d1 < d2)) throw new BadInput('map', 'Name a table, or give a wheel by --inducer and --exducer, the smaller and the larger diameter.')
    const map = genericMap({ name: 'Estimated from its wheel', inducer: d1, exducer: d2, topTipSpeed })
    return { map, told: ['An estimate from two diameters: no measurement stands behind it.'], faults: mapFaults(map), table: mapFile(map) }
  }
  let text: string
  try { text = readText(file) } catch { throw new BadInput('map', `${file} cannot be read.`) }
  const read = readMapFile(text, { temperature: said['--temperature'], pressure: said['--pressure'] })
  if (!read.ok) throw new BadInput(read.asks?.join(', ') ?? 'map', read.says)
  return { map: read.map, told: read.told, faults: mapFaults(read.map), table: mapFile(read.map) }
}
