import { channelIds, channels, guessed, unitsFor, type ChannelId, type Mapping } from '../log/channels.ts'
import { dialectOf } from '../log/dialect.ts'
import { logOf, type Log } from '../log/log.ts'
import { rowsReader, type Rows } from '../log/rows.ts'
import { BadInput } from './badInput.ts'

export const largestLog = 50_000_000

/** A log from the bytes of a file; `said` holds columns that the reader named: `column=channel` or `column=channel:unit`. */
export function logFrom(bytes: Uint8Array, said: readonly string[], stoichiometric: number): { readonly log: Log; readonly rows: Rows; readonly names: readonly string[]; readonly mapping: Mapping } {
  if (bytes.length > largestLog) throw new BadInput('log', `This log is ${Math.round(bytes.length / 1e6)} MB; up to ${largestLog / 1e6} MB are read. Cut it to the drive that matters.`)
  const found = dialectOf(new TextDecoder().decode(bytes.subarray(0, 65536)))
  if (!found.ok) throw new BadInput('log', found.says)
  const { names, units } = found.dialect
  const reader = rowsReader(found.dialect)
  reader.take(bytes)
  const rows = reader.done()
  let mapping: Mapping = guessed(names, units)
  for (const one of said) {
    const [name = '', meaning = ''] = one.split('=')
    const [id = '', unit] = meaning.split(':')
    const column = names.indexOf(name)
    if (column < 0) throw new BadInput('map', `The log has no column “${name.slice(0, 60)}”: ${names.join(', ')}.`)
    if (!channelIds.includes(id as ChannelId)) throw new BadInput('map', `There is no channel “${id.slice(0, 40)}”: ${channelIds.join(', ')}.`)
    const channel = id as ChannelId
    if (unit !== undefined && !unitsFor(channel).some((u) => u.name === unit)) throw new BadInput('map', `${channel} is not read in “${unit.slice(0, 20)}”: ${unitsFor(channel).map((u) => u.name).join(', ')}.`)
    mapping = { ...Object.fromEntries(Object.entries(mapping).filter(([, m]) => m.channel !== channel)), [column]: { channel, unit: unit ?? channels[channel].bare } }
  }
  const read = logOf(rows, mapping, stoichiometric)
  if (!read.ok) throw new BadInput('log', read.says)
  return { log: read.log, rows, names, mapping }
}
