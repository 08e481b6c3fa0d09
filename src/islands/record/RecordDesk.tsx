import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { faceSpread, outsideOf } from '@trochoid/compute/record/expected.ts'
import { groups, type Group } from '@trochoid/compute/record/items.ts'
import { emptyRecord, writeLine, type BuildRecord, type Written } from '@trochoid/compute/record/record.ts'
import { facePressure } from '@trochoid/compute/engine/quantities.ts'
import { write } from '@trochoid/compute/quantity/write.ts'
import { change } from '../../state/build.ts'
import { person, setPerson } from '../../state/person.ts'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { namer, type View } from '../../state/view.ts'
import { useStore } from '../parts/useStore.ts'
import { MeasuredLine } from './MeasuredLine.tsx'

const today = (): string => new Date().toISOString().slice(0, 10)

/** The record of one build: what was measured, chosen and done, by whom and when. */
export function RecordDesk({ view }: { view: Store<View> }) {
  const { sheet, fields } = useStore(view)
  const system = useStore(systemStore)
  const me = useStore(person)
  const record = sheet.record ?? emptyRecord
  const values = new Map([...fields].map(([path, field]) => [path, valueAt(sheet, field) as unknown]))
  const nameOf = namer(fields)
  const put = (edit: (record: BuildRecord) => BuildRecord): void => change((s) => ({ ...s, record: edit(s.record ?? emptyRecord) }))
  const write1 = (id: string, next: Written): void => put((r) => writeLine(r, id, { ...next, by: me.who, on: today() }))
  const outside = outsideOf(record, values)
  return (
    <>
      <div class="field no-print"><label for="who">Who writes (kept in this browser, put beside each line with the day)</label><input id="who" type="text" maxLength={80} value={me.who} onChange={(e) => setPerson({ who: e.currentTarget.value.trim() })} /></div>
      <p role="status">{Object.keys(record.lines).length === 0 ? 'Nothing is written yet.' : outside.length === 0 ? `${Object.keys(record.lines).length} lines are written; every figure lies where it is expected, where anything is expected of it.` : `${outside.length} of the figures ${outside.length === 1 ? 'lies' : 'lie'} outside what is expected: ${outside.map((m) => m.name.replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase())).join('; ')}.`}</p>
      {groups.map((group) => (
        <section key={group.id}>
          <h2 id={group.id}>{group.title}</h2>
          {group.says && <p class="small soft">{group.says}</p>}
          <div class="two">
            {group.measured?.map((item) => <MeasuredLine key={item.id} item={item} line={record.lines[item.id]} fields={values} nameOf={nameOf} system={system} onWrite={(next) => write1(item.id, next)} />)}
            {group.chosen?.map(({ id, name }) => <div class="field" key={id}><label for={`r-${id}`}>{name}</label><input id={`r-${id}`} type="text" maxLength={400} value={record.lines[id]?.text ?? ''} onChange={(e) => write1(id, { text: e.currentTarget.value.trim() })} /></div>)}
          </div>
          {group.id === 'compression' && (['front', 'rear'] as const).map((rotor) => { const spread = faceSpread(record, rotor); return spread !== null && <p key={rotor} class="small">Faces of the {rotor} rotor differ by {write(spread, { ...facePressure, kind: 'pressureDifference', show: ['bar', 'psi'] })}{spread > 1.5e5 ? ': more than the 1.5 bar that common practice allows (no source).' : '.'}</p> })}
          <Steps group={group} record={record} onWrite={write1} />
        </section>
      ))}
      <h2 id="notes">Notes</h2>
      <div class="field"><label for="r-notes">What the next person should know</label><textarea id="r-notes" maxLength={20000} value={record.notes} onChange={(e) => { const notes = e.currentTarget.value; put((r) => ({ ...r, notes })) }} /></div>
    </>
  )
}

function Steps({ group, record, onWrite }: { group: Group; record: BuildRecord; onWrite: (id: string, next: Written) => void }) {
  if (!group.steps) return null
  return (
    <ul class="plain">
      {group.steps.map(({ id, name }) => {
        const line = record.lines[id]
        return <li key={id}><label><input type="checkbox" checked={line?.done ?? false} onChange={(e) => onWrite(id, { done: e.currentTarget.checked })} /> {name}</label>{line?.done && <span class="small soft"> {[line.by, line.on].filter(Boolean).join(', ')}</span>}</li>
      })}
    </ul>
  )
}
