import type { Field } from '@trochoid/compute/build/field.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { Side } from '@trochoid/compute/comparison/side.ts'
import { useEffect, useState } from 'preact/hooks'
import { anyBuilds, type Choice, type Opened } from '../../state/anyBuild.ts'
import { open } from '../../state/edit.ts'
import { builds } from '../../state/own.ts'
import { demoSheets, look } from '../../state/solver/look.ts'
import { system as systemStore } from '../../state/system.ts'
import { Choose } from '../parts/Choose.tsx'
import { useStore } from '../parts/useStore.ts'
import type { Told } from '../sweep/values.ts'
import { openFile } from '../../state/openFile.ts'
import { fromLink } from './bring.ts'
import { pairAddress, type Pair } from './pair.ts'
import { Remedies } from './Remedies.tsx'
import { Result } from './Result.tsx'

type Props = { pair: Pair; first: Side; second: Side; fields: ReadonlyMap<string, Field>; values: readonly Told[]; sheetPage: string }

/** Which two builds, and what one has against the other. */
export function Two({ pair, first, second, fields, values, sheetPage }: Props) {
  const system = useStore(systemStore)
  const [picked, pick] = useState(pair)
  const [brought, setBrought] = useState<readonly Choice[]>([])
  const [sides, setSides] = useState<readonly [Side, Side]>([first, second])
  const [told, tell] = useState('')
  const [link, setLink] = useState('')
  const all = anyBuilds(useStore(builds), useStore(demoSheets), brought)
  const sheetOf = (id: string, side: Side): Sheet => all.find(([of]) => of === id)?.[1] ?? side.sheet
  const wanted = [sheetOf(picked.first, sides[0]), sheetOf(picked.second, sides[1])] as const

  useEffect(() => {
    let late = false
    const solved = async (sheet: Sheet, i: 0 | 1): Promise<Side> => (sides[i].sheet === sheet ? sides[i] : { sheet, ...(await look(sheet)) })
    if (wanted[0] === sides[0].sheet && wanted[1] === sides[1].sheet) return undefined
    void Promise.all([solved(wanted[0], 0), solved(wanted[1], 1)]).then((both) => { if (!late) setSides(both) })
    return () => { late = true }
  }, [wanted[0], wanted[1]])

  const choose = (next: Pair) => {
    pick(next)
    // An address that brought a build keeps it: it is kept nowhere else.
    if (!location.hash.startsWith('#build=')) history.replaceState(history.state, '', pairAddress(next) || location.pathname + location.search)
  }
  const beside = (sheet: Sheet, says: string) => {
    const id = `brought:${brought.length + 1}`
    setBrought([...brought, [id, sheet]])
    choose({ ...picked, second: id })
    tell(says)
  }
  const bring = async (from: Promise<Opened>) => {
    tell('Reading…')
    const read = await from
    if (read.ok) beside(read.sheet, `${read.sheet.name} stands beside the first, on this page alone: your own builds were not touched.`)
    else tell(`${read.says} Nothing here was changed.`)
  }
  const copy = () => {
    open({ ...sides[0].sheet, name: `Copy of ${sides[0].sheet.name}` })
    choose({ ...picked, second: builds.get().chosen })
    tell('The copy is kept in this browser as your build, and stands as the second. Change it in the build sheet, then come back.')
  }
  // A copy may be one of several of the same name: the number tells them apart.
  const options = all.map(([id, sheet]) => [id, sheet.name] as const)
  return (
    <>
      <div class="two no-print">
        <Choose id="first" label="First build" value={picked.first} options={options} onChoose={(id) => choose({ ...picked, first: id })} />
        <Choose id="second" label="Second build" value={picked.second} options={options} onChoose={(id) => choose({ ...picked, second: id })} />
      </div>
      <div class="row no-print">
        <button type="button" onClick={() => choose({ first: picked.second, second: picked.first })}>Turn them round</button>
        <button type="button" onClick={copy}>Copy the first</button>
        <label class="button">Open a file<input type="file" class="hidden-input" accept=".json,application/json" onChange={(e) => { const input = e.currentTarget; if (input.files?.[0]) void bring(openFile(input.files[0], fields)).then(() => { input.value = '' }) }} /></label>
        <a class="small" href={sheetPage}>The build sheet</a>
      </div>
      <details class="no-print">
        <summary class="small">From a link, or with a remedy</summary>
        <div class="field">
          <label for="link">A link to a build</label>
          <input id="link" type="text" autocomplete="off" spellcheck={false} value={link} aria-describedby="link-hint" onInput={(e) => setLink(e.currentTarget.value)} onKeyDown={(e) => { if (e.key === 'Enter') void bring(fromLink(link, fields)) }} />
          <p id="link-hint" class="hint">Paste the whole address, as it was sent. It is read here and goes nowhere.</p>
          <button type="button" disabled={link.trim() === ''} onClick={() => void bring(fromLink(link, fields))}>Lay it beside the first</button>
        </div>
        <Remedies of={sides[0]} fields={fields} system={system} onTake={(sheet) => beside(sheet, 'The first build with that remedy stands as the second, on this page alone.')} />
      </details>
      <p role="status" class="small">{told}</p>
      <Result a={sides[0]} b={sides[1]} fields={fields} system={system} values={values} />
    </>
  )
}
