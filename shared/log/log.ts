import { channels, toSi, type ChannelId, type Mapping, type Meaning } from './channels.ts'
import { type Rows } from './rows.ts'

/** A log in SI by channel. Time begins at nothing and never runs back. */
export type Log = { readonly count: number; readonly of: Readonly<Partial<Record<ChannelId, Float64Array>>>; /** Rows without a time, or whose time stood still or ran back. */ readonly outOfTime: number }
export type Missing = { readonly ok: false; readonly says: string }

/** A log from its rows and what the columns mean. */
export function logOf(rows: Rows, mapping: Mapping, stoichiometric: number): { readonly ok: true; readonly log: Log } | Missing {
  const by = new Map<ChannelId, readonly [number, Meaning]>()
  for (const [column, meaning] of Object.entries(mapping)) if (rows.columns[Number(column)]) by.set(meaning.channel, [Number(column), meaning])
  for (const id of ['time', 'speed'] as const) if (!by.has(id)) return { ok: false, says: `Choose the column that holds ${id === 'time' ? 'time' : 'shaft speed'}: nothing can be laid over the sheet without it.` }
  const keep: number[] = []
  const times = rows.columns[by.get('time')![0]]!
  let last = -Infinity
  for (let i = 0; i < rows.count; i++) { const t = times[i]!; if (t > last) { keep.push(i); last = t } }
  if (keep.length < 10) return { ok: false, says: 'Fewer than ten rows have a time that runs forward: look whether the right column is taken for time.' }
  const of: Partial<Record<ChannelId, Float64Array>> = {}
  for (const [id, [column, meaning]] of by) {
    const raw = rows.columns[column]!, out = new Float64Array(keep.length)
    const at0 = toSi(0, meaning), slope = toSi(1, meaning) - at0
    for (let k = 0; k < keep.length; k++) out[k] = raw[keep[k]!]! * slope + at0
    of[id] = out
  }
  const start = of.time![0]!
  for (let k = 0; k < keep.length; k++) of.time![k]! -= start
  if (!of.lambda && of.ratio) of.lambda = of.ratio.map((v) => v / stoichiometric)
  return { ok: true, log: { count: keep.length, of, outOfTime: rows.count - keep.length } }
}

/** Whether a channel was logged, by name, for words. */
export const nameOf = (id: ChannelId): string => channels[id].quantity.name
