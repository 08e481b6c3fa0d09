import type { Field } from '@trochoid/compute/build/field.ts'
import { cureSentence, wantsCure, type Cure } from '@trochoid/compute/build/remedies.ts'
import type { Side } from '@trochoid/compute/comparison/side.ts'
import { linkName } from '@trochoid/compute/comparison/phrases.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useState } from 'preact/hooks'
import { thresholds } from '../../state/thresholds.ts'
import { ask } from '../../state/solver/ask.ts'
import { Choose } from '../parts/Choose.tsx'

type Props = { of: Side; fields: ReadonlyMap<string, Field>; system: System; onTake: (sheet: Sheet) => void }

/** The first build with one of its remedies, as the second: each carried through the whole model in a worker. */
export function Remedies({ of, fields, system, onTake }: Props) {
  const links = of.weighed.filter(wantsCure)
  const [link, setLink] = useState('')
  const [cures, setCures] = useState<readonly Cure[]>([])
  const [working, setWorking] = useState(false)
  useEffect(() => {
    setCures([])
    if (!links.some((w) => w.id === link)) return undefined
    setWorking(true)
    return ask({ kind: 'remedies', margin: link, sheet: of.sheet, thresholds: thresholds.get() }, (told) => {
      if (told.kind === 'cure') setCures((known) => [...known, told.cure])
      else if (told.kind === 'done' || told.kind === 'failed') setWorking(false)
    })
  }, [link, of.sheet])
  if (links.length === 0) return <p class="small">Every link of the first build that is known holds: it wants no remedy.</p>
  return (
    <>
      <Choose id="remedy-link" label="A link of the first that wants a remedy" value={link} options={[['', 'choose a link'], ...links.map((w) => [w.id, `${w.margin.title}: ${w.state}`] as const)]} onChoose={setLink} />
      <div role="status">
        {working && <p class="small">Working out how far each remedy must move…</p>}
        <ul class="small">
          {cures.map((cure) => (
            <li key={cure.field}>
              {cureSentence(cure, fields.get(cure.field)!, system)}{' '}
              {cure.sheet && <button type="button" class="plain" onClick={() => onTake({ ...cure.sheet!, name: `${of.sheet.name}, ${linkName(of.weighed.find((w) => w.id === cure.margin)!)} mended` })}>Lay it beside the first</button>}
            </li>
          ))}
        </ul>
      </div>
    </>
  )
}
