import { faceSpread, outsideOf } from '@trochoid/compute/record/expected.ts'
import { groups } from '@trochoid/compute/record/items.ts'
import { facePressure } from '@trochoid/compute/engine/quantities.ts'
import { write } from '@trochoid/compute/quantity/write.ts'
import type { Store } from '../../state/store.ts'
import type { View } from '../../state/view.ts'
import { MeasuredLine } from './MeasuredLine.tsx'
import { Step } from './Step.tsx'
import { useRecord } from './useRecord.ts'
import { Who } from './Who.tsx'

/** The record of one build: what was measured, chosen and done, by whom and when. */
export function RecordDesk({ view }: { view: Store<View> }) {
  const { system, record, values, nameOf, put, writeOf } = useRecord(view)
  const outside = outsideOf(record, values)
  return (
    <>
      <Who />
      <p role="status">{Object.keys(record.lines).length === 0 ? 'Nothing is written yet.' : outside.length === 0 ? `${Object.keys(record.lines).length} lines are written; every figure lies where it is expected, where anything is expected of it.` : `${outside.length} of the figures ${outside.length === 1 ? 'lies' : 'lie'} outside what is expected: ${outside.map((m) => m.name.replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase())).join('; ')}.`}</p>
      {groups.map((group) => (
        <section key={group.id}>
          <h2 id={group.id}>{group.title}</h2>
          {group.says && <p class="small soft">{group.says}</p>}
          <div class="two">
            {group.measured?.map((item) => <MeasuredLine key={item.id} item={item} line={record.lines[item.id]} fields={values} nameOf={nameOf} system={system} onWrite={writeOf(item.id)} />)}
            {group.chosen?.map(({ id, name }) => <div class="field" key={id}><label for={`r-${id}`}>{name}</label><input id={`r-${id}`} type="text" maxLength={400} value={record.lines[id]?.text ?? ''} onChange={(e) => writeOf(id)({ text: e.currentTarget.value.trim() })} /></div>)}
          </div>
          {group.id === 'compression' && (['front', 'rear'] as const).map((rotor) => { const spread = faceSpread(record, rotor); return spread !== null && <p key={rotor} class="small">Faces of the {rotor} rotor differ by {write(spread, { ...facePressure, kind: 'pressureDifference', show: ['bar', 'psi'] })}{spread > 1.5e5 ? ': more than the 1.5 bar that common practice allows (no source).' : '.'}</p> })}
          {group.steps && <ul class="plain">{group.steps.map(({ id, name }) => <li key={id}><Step name={name} line={record.lines[id]} onWrite={writeOf(id)} /></li>)}</ul>}
        </section>
      ))}
      <h2 id="notes">Notes</h2>
      <div class="field"><label for="r-notes">What the next person should know</label><textarea id="r-notes" maxLength={20000} value={record.notes} onChange={(e) => { const notes = e.currentTarget.value; put((r) => ({ ...r, notes })) }} /></div>
    </>
  )
}
