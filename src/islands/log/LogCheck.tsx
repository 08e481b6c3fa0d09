import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import type { Mapping } from '@trochoid/compute/log/channels.ts'
import { shownUnit, write, writeNumber } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useState } from 'preact/hooks'
import { change } from '../../state/build.ts'
import { knownColumns, rememberColumns } from '../../state/columns.ts'
import type { Opened, Told } from '../../state/drives/tasks.ts'
import type { Store } from '../../state/store.ts'
import { system } from '../../state/system.ts'
import type { View } from '../../state/view.ts'
import { useDrives } from '../parts/useDrives.ts'
import { useStore } from '../parts/useStore.ts'
import { Working } from '../parts/Working.tsx'
import { Columns } from './Columns.tsx'
import { Findings } from './Findings.tsx'
import { Trace } from './Trace.tsx'

type Check = Extract<Told, { kind: 'check' }>
const rpm = (speed: number): string => writeNumber((speed * 30) / Math.PI, 4)

/** Opens a log, lets its columns be told and its pull be chosen, and lays it over the build. */
export function LogCheck({ view, onFirst }: { view: Store<View> | null; onFirst: () => void }) {
  const units = useStore(system)
  const [opened, setOpened] = useState<Opened | null>(null)
  const [pull, setPull] = useState<{ from: number; to: number } | null>(null)
  const [check, setCheck] = useState<Check | null>(null)
  const [asked, setAsked] = useState<{ from: number; to: number } | null>(null)
  const [note, setNote] = useState('')
  const work = useDrives((told) => {
    if (told.kind === 'opened') {
      onFirst()
      setOpened(told.opened)
      setCheck(null)
      setAsked(null)
      const [first] = told.opened.pulls
      setPull(first ? { from: first.from, to: first.to } : told.opened.seconds > 0 ? { from: 0, to: told.opened.seconds } : null)
      setNote(told.opened.fault ?? '')
      if (!told.opened.fault && first) lay(first.from, first.to)
    }
    if (told.kind === 'check') setCheck(told)
  })
  const open = (file: File | null): void => { if (view) { setNote(''); work.ask({ kind: 'open', file, sheet: view.get().sheet, known: knownColumns() }) } }
  const lay = (from: number, to: number): void => { if (view) { setAsked({ from, to }); work.ask({ kind: 'check', sheet: view.get().sheet, from, to }) } }
  const stop = (): void => { work.stop(); setOpened(null); setCheck(null); setAsked(null); setNote('Stopped. Open the log again to go on.') }
  const map = (mapping: Mapping): void => { if (view && opened) { rememberColumns(opened.signature, mapping); work.ask({ kind: 'map', mapping, sheet: view.get().sheet }) } }
  // What was laid over one build says nothing of another: with each change of it the same stretch is laid over anew.
  useEffect(() => view?.watch(() => { if (view.get().fine && asked) lay(asked.from, asked.to) }), [view, asked])
  const told = (path: string, si: number) => {
    const field = view?.get().fields.get(path)
    if (!field) return null
    return { name: field.label ?? field.shape.name, value: isQuantity(field.shape) ? write(si, field.shape, shownUnit(field.shape, units)) : '' }
  }
  const adopt = (): void => {
    if (!check?.check.ve.ok || !opened) return
    const { curve, rows } = check.check.ve
    change((sheet) => setEntry(sheet, 'engine.veCurve', { value: curve, from: 'measured', note: `Fitted to ${rows} rows of ${opened.name}, ${writeNumber(check.from, 4)} to ${writeNumber(check.to, 4)} s, with the injectors of this sheet` }))
    setNote('The fitted curve stands in your build, with where it came from. The margins follow it.')
  }
  return (
    <>
      <div class="field no-print">
        <label for="log">Log of your own (CSV, up to 50 MB, read on this device only)</label>
        <input id="log" type="file" accept=".csv,.txt,.tsv,text/csv" onChange={(e) => { const file = e.currentTarget.files?.[0]; if (file) open(file) }}
          onDragOver={(e) => e.preventDefault()} onDrop={(e) => { e.preventDefault(); const file = e.dataTransfer?.files[0]; if (file) open(file) }} />
      </div>
      <p class="row no-print">
        <button type="button" disabled={work.part !== null} onClick={() => open(null)}>Open the invented log</button>
        <Working part={work.part} says="Working" onStop={stop} />
        {check && <button type="button" class="plain" onClick={() => print()}>Print</button>}
      </p>
      <p role="status" class="small">{work.fault || note}</p>
      {opened && (
        <>
          <p><strong>{opened.name}</strong>{opened.invented && ', made from the build that was shown when it was opened, with two faults planted in the car'}: {opened.rows} rows over {writeNumber(opened.seconds, 4)} s{opened.cut && ', the rest left aside'}.{opened.bad.count > 0 && <> <strong>{opened.bad.count === 1 ? 'One row' : `${opened.bad.count} rows`} could not be read</strong> and left out, the first: {opened.bad.first.map((b) => `line ${b.line}, ${b.says}`).join('; ')}.</>}{opened.outOfTime > 0 && ` ${opened.outOfTime} rows whose time does not run forward are left out.`}</p>
          <Columns opened={opened} onChange={map} />
          {pull && !opened.fault && (
            <>
              {opened.pulls.length > 0
                ? <p class="row no-print">{opened.pulls.map((p) => <button type="button" key={p.from} aria-pressed={Math.abs(p.from - pull.from) < 1e-6 && Math.abs(p.to - pull.to) < 1e-6} onClick={() => { setPull({ from: p.from, to: p.to }); setNote(''); lay(p.from, p.to) }}>{rpm(p.low)} to {rpm(p.high)} rpm at {writeNumber(p.from, 4)} s</button>)}</p>
                : <p>No stretch at full throttle with rising speed was found. Mark one yourself.</p>}
              <Trace trace={opened.trace} seconds={opened.seconds} from={pull.from} to={pull.to} onChange={(from, to) => setPull({ from, to })} />
              <p class="no-print"><button type="button" disabled={work.part !== null} onClick={() => lay(pull.from, pull.to)}>Lay this stretch over the build</button></p>
            </>
          )}
          {check && !work.fault && <Findings check={check.check} system={units} told={told} onAdopt={adopt} />}
        </>
      )}
    </>
  )
}
