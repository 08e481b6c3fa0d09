import type { Field as SheetField } from '@trochoid/compute/build/field.ts'
import { setEntry, valueAt, type From, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { readGrade } from '@trochoid/compute/quantity/grade.ts'
import { read, type Read, type Refused } from '@trochoid/compute/quantity/read.ts'
import { shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { change } from '../../state/build.ts'
import { fromWords } from '../margins/words.ts'
import { Field, type Fault } from '../parts/Field.tsx'
import { heard } from '../parts/heard.ts'
import { written } from '../parts/say.ts'
import { numberText, readTyped } from '../parts/typed.ts'
import { Rows } from './Rows.tsx'

type Props = { field: SheetField; fields: ReadonlyMap<string, SheetField>; sheet: Sheet; system: System; uid: string; /** Without note and way back: beneath a margin. */ brief?: true }

/** One number of the build: what was typed, where it came from, a note. */
export function Entry({ field, fields, sheet, system, uid, brief }: Props) {
  const { path, shape } = field
  const entry = sheet.entries[path]
  const value = valueAt(sheet, field)
  const id = `${uid}-${path.replaceAll('.', '-')}`
  const label = field.label ?? shape.name
  const [typed, setLocal] = useState<{ text: string; unit?: string; fault?: Fault; doubt?: string; /** What stood in the build when it was typed. */ of?: unknown } | null>(null)
  // A number that was changed elsewhere, by a remedy or in another tab, takes the place of what was typed.
  const local = typed && (typed.fault || !('of' in typed) || typed.of === value) ? typed : null
  const unit = local?.unit ?? (isQuantity(shape) ? shownUnit(shape, system) : '')
  const put = (next: unknown, typed: string) => change((s) => said(s, path, next, typed))

  const done = (text: string, r: Read | Refused) => {
    if (!r.ok) return setLocal({ text, unit, ...(r.fault === 'empty' ? {} : { fault: r }) })
    const at = r.at === undefined ? null : readAt(field, r.at, fields)
    if (at && !at.ok) return setLocal({ text, unit, fault: at })
    setLocal({ text, unit: r.unit, of: r.value, ...(r.doubt !== undefined && { doubt: r.doubt }) })
    // One change, also where the pressure beside a flow goes into a field of its own: one step to take back.
    change((s) => {
      const put = said(s, path, r.value, text)
      return at?.ok ? said(put, field.at!, at.value, r.at!) : put
    })
  }
  const type = (text: string) => {
    if (text.trim() === '' && shape.kind !== 'choice') { setLocal({ text, of: null }); return put(null, '') }
    if (shape.kind === 'choice') { setLocal(null); return put(text, text) }
    if (shape.kind === 'grade') {
      const grade = readGrade(text)
      if (!grade.ok) return setLocal({ text, fault: grade })
      setLocal({ text, of: grade.value })
      return put(grade.value, text)
    }
    if (!isQuantity(shape)) return undefined
    const r = readTyped(text, shape, unit)
    if (!(r instanceof Promise)) return done(text, r)
    setLocal({ text, unit, of: value })
    return void r.then((later) => done(text, later))
  }
  const step = (by: 1 | -1) => { if (isQuantity(shape) && typeof value === 'number') { const next = value + by * shape.step; setLocal(null); put(next, numberText(next, shape, unit)) } }
  const text = local?.text ?? (isQuantity(shape) ? (typeof value === 'number' ? numberText(value, shape, unit) : '') : typeof value === 'string' ? value : '')
  const from = (
    <>
      {value === null && <p class="differs">Not known: nothing is put in its place.</p>}
      {entry && <div class="row from">
        <label class="small" for={`${id}-from`}>It is</label>
        <select id={`${id}-from`} value={entry.from ?? 'common'} onChange={(e) => change((s) => setEntry(s, path, { ...entry, value: valueAt(s, field), from: e.currentTarget.value as From }))}>
          {Object.entries(fromWords).map(([key, words]) => <option key={key} value={key} selected={key === (entry.from ?? 'common')}>{words.toLowerCase()}</option>)}
        </select>
        {!brief && <button type="button" class="plain" onClick={() => { setLocal(null); change((s) => setEntry(s, path, undefined)) }}>Back to the start value, {written(field.start, shape, system)}</button>}
      </div>}
      {entry && !brief && <Note id={id} text={entry.note ?? ''} onNote={(note) => change((s) => setEntry(s, path, { ...s.entries[path], value: valueAt(s, field), note }))} />}
    </>
  )
  if (shape.kind === 'curve' || shape.kind === 'map') return <div class="entry"><Rows id={id} label={label} shape={shape} value={value} system={system} onValue={(v) => put(v, '')} />{from}</div>
  return <Field id={id} label={label} shape={shape} text={text} unit={unit} fault={local?.fault} doubt={local?.doubt} heard={local && local.of === value ? heard(text, value, shape, unit) : undefined} onType={type} onStep={step}>{from}</Field>
}

const said = (sheet: Sheet, path: string, value: unknown, typed: string): Sheet => setEntry(sheet, path, { ...sheet.entries[path], value, typed, from: sheet.entries[path]?.from ?? 'guess' })

/** The "at 3 bar" of "650 cc/min at 3 bar", for the field that keeps it. */
function readAt(field: SheetField, text: string, fields: ReadonlyMap<string, SheetField>): { readonly ok: true; readonly value: number } | { readonly ok: false; readonly says: string } {
  const other = field.at === undefined ? undefined : fields.get(field.at)
  if (!other || !isQuantity(other.shape)) return { ok: false, says: `This field takes no “at ${text}”.` }
  const r = read(text, other.shape)
  return r.ok === 'arithmetic' ? { ok: false, says: `Write what follows “at” as a plain number with its unit.` } : r
}

function Note({ id, text, onNote }: { id: string; text: string; onNote: (note: string) => void }) {
  return <div class="row"><label class="small" for={`${id}-note`}>Note</label><input id={`${id}-note`} type="text" maxLength={2000} value={text} onChange={(e) => onNote(e.currentTarget.value)} /></div>
}
