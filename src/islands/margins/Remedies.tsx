import type { Weighed } from '@trochoid/compute/build/margins.ts'
import { cureSentence, type Cure } from '@trochoid/compute/build/remedies.ts'
import { useEffect, useState } from 'preact/hooks'
import { change } from '../../state/build.ts'
import type { Store } from '../../state/store.ts'
import { system } from '../../state/system.ts'
import { thresholds } from '../../state/thresholds.ts'
import type { View } from '../../state/view.ts'
import { ask } from '../../state/solver/ask.ts'

/** How far each natural remedy must move, each carried through the whole model in a worker; typing anywhere stops it. */
export function Remedies({ of, view }: { of: Weighed; view: Store<View> }) {
  const { sheet, fine, fields } = view.get()
  const [cures, setCures] = useState<readonly Cure[]>([])
  const [state, setState] = useState<'working' | 'done' | 'failed'>('working')
  useEffect(() => {
    if (!fine) return undefined
    setCures([])
    setState('working')
    return ask({ kind: 'remedies', margin: of.id, sheet, thresholds: thresholds.get() }, (told) => {
      if (told.kind === 'cure') setCures((known) => [...known, told.cure])
      else if (told.kind === 'done' || told.kind === 'failed') setState(told.kind)
    })
  }, [sheet, fine, of.id])
  return (
    <div role="status">
      <p class="small"><strong>What would mend it</strong></p>
      <ul class="small">
        {cures.map((cure) => (
          <li key={cure.field}>
            {cureSentence(cure, fields.get(cure.field)!, system.get())}{' '}
            {cure.sheet && <button type="button" class="plain" onClick={() => change((now) => ({ ...now, entries: { ...now.entries, [cure.field]: cure.sheet!.entries[cure.field]! } }))}>Try it in the build</button>}
          </li>
        ))}
      </ul>
      {state === 'working' && <p class="small">Working out how far each must move…</p>}
      {state === 'failed' && <p class="small">The remedies could not be worked out.</p>}
    </div>
  )
}
