import { mapFaults } from '@trochoid/compute/boost/mapFaults.ts'
import { readMapFile, type MapRead } from '@trochoid/compute/boost/mapFile.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { useState } from 'preact/hooks'
import { useStore } from '../islands/parts/useStore.ts'
import { system as systemStore } from '../state/system.ts'
import { MapPicture } from './MapPicture.tsx'
import { Asked } from './Asked.tsx'
import { reference } from './reference.ts'

type Props = { text: string; onText: (text: string) => void; onKeep: (map: Extract<MapRead, { ok: true }>['map']) => void }
const tooLarge = 2_000_000

/** A map from a table: a file, a paste from a spreadsheet, or a copy of another map to be edited. */
export function Bring({ text, onText, onKeep }: Props) {
  const system = useStore(systemStore)
  const [given, give] = useState<{ temperature?: number | undefined; pressure?: number | undefined }>({})
  const [told, tell] = useState('')
  const read = text.trim() === '' ? null : readMapFile(text, given)
  const asks = read && !read.ok ? read.asks ?? [] : []
  const asked = (key: 'temperature' | 'pressure', of: Quantity) => (asks.includes(key) || given[key] !== undefined) && <Asked key={key} id={`map-${key}`} of={of} system={system} onValue={(value) => give((now) => ({ ...now, [key]: value ?? undefined }))} />
  const open = async (file: File | undefined) => {
    if (!file) return
    if (file.size > tooLarge) return tell(`${file.name} is far larger than a table of one map can be.`)
    onText(await file.text())
    tell(`${file.name} stands below; nothing is kept yet.`)
  }
  const usable = read?.ok && mapFaults(read.map).every(({ weight }) => weight === 'doubt')
  return (
    <>
      <p>
        One point a row, with columns for corrected speed, corrected flow, pressure ratio and efficiency, in any order, each with its unit in the
        heading or in a row beneath it. Above them, where you know them: <code>map; its name</code>, <code>reference temperature; 25&nbsp;°C</code>, <code>reference pressure; 100&nbsp;kPa</code>.
        Cells stand between semicolons, tabs or commas; decimal commas are read too.
      </p>
      <div class="row"><label class="button">Open a CSV file<input type="file" class="hidden-input" accept=".csv,.txt,text/csv,text/plain" onChange={(e) => { const input = e.currentTarget; void open(input.files?.[0]).then(() => { input.value = '' }) }} /></label></div>
      <p role="status" class="small">{told}</p>
      <div class="field">
        <label for="map-table">The table</label>
        <textarea id="map-table" rows={12} spellcheck={false} value={text} aria-invalid={read && !read.ok && asks.length === 0 ? true : undefined} aria-describedby="map-table-says" onInput={(e) => onText(e.currentTarget.value)} />
        <p id="map-table-says" class={read && !read.ok ? 'fault' : 'hint'}>{read === null ? 'Nothing typed here leaves the page.' : read.ok ? read.told.join(' ') : read.says}</p>
      </div>
      {asked('temperature', reference.temperature)}
      {asked('pressure', reference.pressure)}
      {read?.ok && <MapPicture map={read.map} system={system} />}
      <button type="button" disabled={!usable} onClick={() => { if (read?.ok) { onKeep(read.map); onText('') } }}>Keep this map</button>
    </>
  )
}
