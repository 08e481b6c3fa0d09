import { fromAt, valueAt } from '@trochoid/compute/build/sheet.ts'
import { inUnit, shownUnit } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useRef, useState } from 'preact/hooks'
import { person, setPerson } from '../../state/person.ts'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { namer, type View } from '../../state/view.ts'
import { Chart } from '../chart/Chart.tsx'
import { Line } from '../margins/Line.tsx'
import { verdict } from '../margins/Margins.tsx'
import { legend } from '../margins/words.ts'
import { useStore } from '../parts/useStore.ts'
import { charts, quantityOf, type Told } from '../sweep/values.ts'
import { RecordPrint } from './RecordPrint.tsx'
import { makerOf, worstOf, type Makers } from './workings.ts'

type Props = { view: Store<View>; values: readonly Told[]; makers: Makers; /** The page that opens a build from an address; without it there is no code. */ opens?: string }

const shownCharts = ['power', 'torque', 'pressures', 'intake', 'exhaust', 'heat']

/** One document for owner and workshop: what was found, on what it rests, what was done. */
export function Report({ view, values, makers, opens }: Props) {
  const now = useStore(view)
  const system = useStore(systemStore)
  const me = useStore(person)
  const nameOf = namer(now.fields)
  const known = new Map(values.map((v) => [v[0], v]))
  const [day, setDay] = useState('')
  useEffect(() => setDay(new Date().toISOString().slice(0, 10)), [])
  const rests = [...now.fields.values()]
  const from = (what: string): number => rests.filter((f) => valueAt(now.sheet, f) !== null && fromAt(now.sheet, f) === what).length
  const worst = worstOf(now.weighed, makers)
  return (
    <>
      <div class="row no-print">
        <div class="field"><label for="shop">Name on the cover (kept in this browser)</label><input id="shop" type="text" maxLength={120} value={me.shop} onInput={(e) => setPerson({ shop: e.currentTarget.value })} /></div>
        <button type="button" onClick={() => print()}>Print, or save as PDF</button>
      </div>
      <section class="cover">
        {me.shop !== '' && <p>{me.shop}</p>}
        <p class="answer"><strong>{now.sheet.name}</strong></p>
        {now.sheet.note !== '' && <p>{now.sheet.note}</p>}
        <p class="small">{[day, me.who].filter(Boolean).join(', ')}</p>
        <p>{verdict(now.weighed)}</p>
        <p class="small">Of {rests.length} numbers, {from('measured')} are measured, {from('maker')} a maker’s, {from('guess')} guessed; the rest is common practice or not known.</p>
        {opens && <Address view={now} opens={opens} />}
      </section>

      <section class="sheet-break">
        <h2 id="margins">Margins</h2>
        <p class="small soft">{legend}</p>
        <ol class="margins">{now.weighed.map((w) => <li key={w.id} class="margin" data-state={w.state}><Line of={w} system={system} nameOf={nameOf} /></li>)}</ol>
      </section>

      <section class="sheet-break">
        <h2 id="sweep">Over shaft speed</h2>
        {charts.filter((c) => shownCharts.includes(c.id)).map((c) => {
          const told = c.paths.flatMap((path) => { const v = known.get(path); return v ? [v] : [] })
          if (told.length === 0 || now.solved.points.length === 0) return null
          const unit = shownUnit(quantityOf(told[0]!), system)
          const line = (v: Told, path = v[0]) => now.solved.points.map((p) => { const si = p.values[path]; return si === undefined ? null : inUnit(si, quantityOf(v), unit) })
          return <Chart key={c.id} id={`p-${c.id}`} title={`${c.title} over shaft speed`} summary={`${c.title} at full throttle over shaft speed.`} x={now.solved.points.map((p) => (p.speed * 30) / Math.PI)} xName="Shaft speed" xUnit="rpm" yUnit={unit} series={told.map((v, i) => ({ name: v[1], y: line(v), ...(i === 0 && c.band && { band: [line(v, c.band[0]), line(v, c.band[1])] as const }) }))} every={6} />
        })}
      </section>

      <section class="sheet-break">
        <h2 id="workings">Working of the worst five</h2>
        {worst.length === 0 && <p>No link has a number to work out.</p>}
        {worst.map((w) => <Working key={w.id} id={w.id} title={`${w.margin.title}: ${makerOf(w, makers)!.title.toLowerCase()}`} of={w} view={now} makers={makers} live={opens !== undefined} />)}
      </section>

      <section class="sheet-break">
        <h2 id="record">Build record</h2>
        <RecordPrint view={now} system={system} />
      </section>
    </>
  )
}

function Working({ id, title, of, view, makers, live }: { id: string; title: string; of: View['weighed'][number]; view: View; makers: Makers; live: boolean }) {
  const place = useRef<HTMLDivElement>(null)
  const system = useStore(systemStore)
  useEffect(() => {
    if (!live || !view.fine) return
    void import('./workings.ts').then(({ workingInto }) => place.current && workingInto(place.current, of, view, makers, system)).catch(() => { if (place.current) place.current.textContent = 'The working could not be fetched: it is on the calculator’s own page.' })
  }, [of, view, system])
  return <section><h3 id={`w-${id}`}>{title}</h3><div ref={place}><p class="small"><a href={makerOf(of, makers)!.page}>{makerOf(of, makers)!.title}, with its working</a></p></div></section>
}

/** The build's address, as a code for a camera: both are made here, and neither the record nor notes are in them. */
function Address({ view, opens }: { view: View; opens: string }) {
  const [drawn, setDrawn] = useState<preact.ComponentChild>(null)
  useEffect(() => {
    void Promise.all([import('@trochoid/compute/link/buildLink.ts'), import('@trochoid/compute/link/fragment.ts'), import('./Qr.tsx')]).then(async ([{ buildCode }, { buildFragment }, { Qr }]) => {
      setDrawn(<Qr address={new URL(opens + buildFragment(await buildCode(view.sheet, view.fields, '')), location.href).href} />)
    })
  }, [view.sheet])
  return <div>{drawn}<p class="small soft">Opens this build’s numbers in the handbook. Record and notes are not in it.</p></div>
}
