import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { emptyRecord, writeLine, type BuildRecord, type Written } from '@trochoid/compute/record/record.ts'
import { change } from '../../state/build.ts'
import { person } from '../../state/person.ts'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { namer, type View } from '../../state/view.ts'
import { useStore } from '../parts/useStore.ts'

const today = (): string => new Date().toISOString().slice(0, 10)

/** The record of the build that is shown, what its sheet says, and how a line of it is written: with who and when. */
export function useRecord(view: Store<View>) {
  const now = useStore(view)
  const system = useStore(systemStore)
  const me = useStore(person)
  const put = (edit: (record: BuildRecord) => BuildRecord): void => change((s) => ({ ...s, record: edit(s.record ?? emptyRecord) }))
  return {
    now, system, put, record: now.sheet.record ?? emptyRecord,
    values: new Map([...now.fields].map(([path, field]) => [path, valueAt(now.sheet, field) as unknown])),
    nameOf: namer(now.fields),
    writeOf: (id: string) => (next: Written): void => put((r) => writeLine(r, id, { ...next, by: me.who, on: today() })),
  }
}
