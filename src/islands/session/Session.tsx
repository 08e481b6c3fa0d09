import { circuits, type CircuitId } from '@trochoid/compute/session/circuits.ts'
import type { Lap } from '@trochoid/compute/session/piece.ts'
import { useEffect, useState } from 'preact/hooks'
import type { Told } from '../../state/drives/tasks.ts'
import type { Store } from '../../state/store.ts'
import { system } from '../../state/system.ts'
import type { View } from '../../state/view.ts'
import { Choose } from '../parts/Choose.tsx'
import { csv, saveFile } from '../parts/files.ts'
import { useDrives } from '../parts/useDrives.ts'
import { useStore } from '../parts/useStore.ts'
import { Working } from '../parts/Working.tsx'

export type Shown = Extract<Told, { kind: 'session' }>
type Props = { view: Store<View> | null; show: (shown: Shown) => void; /** The build shown is not the one the page was made with. */ fresh?: boolean }

const lengths = [10, 15, 20, 30, 45, 60] as const

/** What is driven, for how long; the work is done beside the page and can be stopped. */
export function Session({ view, show, fresh = false }: Props) {
  const [over, setOver] = useState<CircuitId | 'file'>('quarry')
  const [length, setLength] = useState(30)
  const [start, setStart] = useState<'cold' | 'warm'>('warm')
  const [lap, setLap] = useState<Lap | null>(null)
  const [note, setNote] = useState('')
  const [last, setLast] = useState<Shown | null>(null)
  const units = useStore(system)
  const work = useDrives((told) => {
    if (told.kind === 'session') { setNote('Done.'); setLast(told); show(told) }
    if (told.kind === 'drive') { setLap(told.lap); setNote(told.bad > 0 ? `${told.bad} rows of the file could not be read and are left out.` : '') }
  })
  const run = (): void => {
    if (!view) return
    const what = over === 'file' ? lap : over
    if (what === null) return setNote('Choose a file first: CSV with time, shaft speed, car speed and throttle.')
    setNote('')
    work.ask({ kind: 'session', sheet: view.get().sheet, over: what, minutes: length, start })
  }
  const read = (file: File | undefined): void => { if (file && view) { setLap(null); setNote(''); work.ask({ kind: 'drive', file, sheet: view.get().sheet }) } }
  const stop = (): void => { work.stop(); setNote('Stopped.') }
  // Another build than the page's own is driven at once; after that, each change of the build.
  useEffect(() => { if (fresh) run() }, [])
  useEffect(() => view?.watch(() => { if (view.get().fine) run() }), [view, over, length, start, lap])
  useEffect(() => { if (last) show(last) }, [units])
  return (
    <>
      <div class="row no-print">
        <Choose id="over" label="Driven over" value={over} options={[...Object.entries(circuits).map(([id, c]) => [id, c.name] as const), ['file', 'a log of your own']]} onChoose={(v) => setOver(v as CircuitId | 'file')} />
        <Choose id="length" label="For" value={String(length)} options={lengths.map((n) => [String(n), `${n} minutes`])} onChoose={(v) => setLength(Number(v))} />
        <Choose id="start" label="Begins" value={start} options={[['warm', 'warmed up'], ['cold', 'cold, as the air']]} onChoose={(v) => setStart(v as 'cold' | 'warm')} />
      </div>
      {over === 'file'
        ? <div class="field no-print"><label for="drive">Log with time, shaft speed, car speed and throttle (CSV, read on this device only)</label><input id="drive" type="file" accept=".csv,.txt,text/csv" onChange={(e) => read(e.currentTarget.files?.[0])} />{lap && <p class="hint">{lap.name}: {Math.round(lap.seconds)} s, driven over and over.</p>}</div>
        : <p class="small soft">{circuits[over].note}</p>}
      <p class="row no-print">
        <button type="button" disabled={work.part !== null} onClick={run}>Drive it</button>
        <Working part={work.part} says="Driving" onStop={stop} />
        {last && <button type="button" class="plain" onClick={() => saveFile('session.csv', 'text/csv', table(last))}>Save as CSV</button>}
        <button type="button" class="plain" onClick={() => print()}>Print</button>
      </p>
      <p role="status" class="small">{work.fault || note}</p>
    </>
  )
}

const table = ({ result }: Shown): string => csv([
  ['time, s', 'lap', 'metal, °C', 'coolant, °C', 'oil in the sump, °C', 'oil to the bearings, °C', 'charge at full throttle, °C'],
  ...result.moments.map((m) => [m.t.toFixed(1), String(m.lap + 1), ...[m.metal, m.coolant, m.oil, m.bearings, m.charge].map((k) => (k - 273.15).toFixed(2))]),
])
