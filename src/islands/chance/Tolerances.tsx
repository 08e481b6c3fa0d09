import { inputsOf, type Input } from '@trochoid/compute/uncertainty/inputs.ts'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { tolerances } from '../../state/tolerances.ts'
import type { View } from '../../state/view.ts'
import { useStore } from '../parts/useStore.ts'
import { groupOf, groups } from './groups.ts'
import { Tolerance } from './Tolerance.tsx'

/** What each number of the build may be out by, folded by the parts of the sheet. */
export function Tolerances({ view }: { view: Store<View> }) {
  const { sheet, fields } = useStore(view)
  const said = useStore(tolerances)
  const inputs = inputsOf(sheet, fields, said)
  return <>{groups.map(({ id, title }) => <Group key={id} id={id} title={title} inputs={inputs.filter((input) => groupOf(input.path) === id)} sheet={sheet} />)}</>
}

function Group({ id, title, inputs, sheet }: { id: string; title: string; inputs: readonly Input[]; sheet: View['sheet'] }) {
  const system = useStore(systemStore)
  const [open, setOpen] = useState(false)
  const fold = useRef<HTMLDetailsElement>(null)
  // It may have been opened before the page came alive.
  useEffect(() => setOpen(fold.current?.open ?? false), [])
  const exact = inputs.filter((input) => input.spread.half === 0).length
  const changed = inputs.filter((input) => input.spread !== input.usual).length
  return (
    <details ref={fold} class="section" onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary><h3>{title}</h3> <span class="small soft">{inputs.length - exact} with a tolerance, {exact} exact{changed > 0 ? `, ${changed} changed by you` : ''}</span></summary>
      {open && <div class="sheet" id={`tolerances-${id}`}>{inputs.map((input) => <Tolerance key={`${input.id} ${system}`} of={input} sheet={sheet} system={system} />)}</div>}
    </details>
  )
}
