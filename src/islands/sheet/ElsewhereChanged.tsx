import { alike } from '@trochoid/compute/build/differing.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import type { Entry, Sheet } from '@trochoid/compute/build/sheet.ts'
import { edit, putBack } from '../../state/edit.ts'
import { builds } from '../../state/own.ts'
import { patched } from '../../state/steps.ts'
import { system } from '../../state/system.ts'
import { elsewhere, settle, settleRemoved, type Difference } from '../../state/tabs.ts'
import { written } from '../parts/say.ts'
import { useStore } from '../parts/useStore.ts'

/** What another tab changed in these builds while this one was open: both values, and the reader chooses. */
export function ElsewhereChanged({ fields }: { fields: ReadonlyMap<string, Field> }) {
  const { differences, removed } = useStore(elsewhere)
  const { own } = useStore(builds)
  const shown = differences.filter((d) => own[d.id])
  if (shown.length === 0 && Object.keys(removed).length === 0) return <div role="status" />
  return (
    <div class="differs no-print" role="status" data-elsewhere>
      {Object.entries(removed).map(([id, sheet]) => (
        <p key={id}>“{sheet.name}” was removed in another tab. <button type="button" class="plain" onClick={() => { putBack(id, sheet); settleRemoved(id) }}>Put it back here</button> <button type="button" class="plain" onClick={() => settleRemoved(id)}>Leave it removed</button></p>
      ))}
      {shown.length > 0 && (
        <>
          <p>Changed in another tab while this one was open. Both values are kept until you choose.</p>
          <ul>{shown.map((d) => <Both key={`${d.id} ${d.path}`} of={d} sheet={own[d.id]!} field={fields.get(d.path)} />)}</ul>
          {shown.length > 1 && <p><button type="button" class="plain" onClick={() => { for (const d of shown) settle(d) }}>Leave all as they are now</button></p>}
        </>
      )}
    </div>
  )
}

/** One field: what it is now, and what else it was, here or there. */
function Both({ of, sheet, field }: { of: Difference; sheet: Sheet; field: Field | undefined }) {
  const isText = of.path === 'name' || of.path === 'note'
  const now: Entry | undefined = isText ? { value: sheet[of.path as 'name' | 'note'] } : sheet.entries[of.path]
  const say = (entry: Entry | undefined): string => (isText ? `“${String(entry?.value)}”` : field ? spoken(entry, field) : String(entry?.value))
  const others = [['here', of.before], ['there', of.after]] as const
  const label = isText ? (of.path === 'name' ? 'Name' : 'Note') : field?.label ?? field?.shape.name ?? of.path
  return (
    <li>
      {label} of {sheet.name}: now {say(now)}.{' '}
      {others.filter(([, entry]) => JSON.stringify(entry) !== JSON.stringify(now)).map(([place, entry]) => (
        <button key={place} type="button" class="plain" onClick={() => { edit(of.id, (s) => patched(s, [{ path: of.path, before: now, after: entry }])); settle(of) }}>
          Use {say(entry)}, {place === 'here' ? 'as it was here' : 'as the other tab had it'}
        </button>
      ))}{' '}
      <button type="button" class="plain" onClick={() => settle(of)}>Leave it</button>
    </li>
  )

  function spoken(entry: Entry | undefined, { shape, start }: Field): string {
    const value = entry ? entry.value : start
    if (shape.kind === 'curve' || shape.kind === 'map') return alike(value, entryValue(now, start)) ? 'the present table' : 'the other table'
    return `${written(value, shape, system.get(), 5)}${entry ? '' : ' (the start value)'}`
  }
}
const entryValue = (entry: Entry | undefined, start: unknown): unknown => (entry ? entry.value : start)
