import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Chance } from '@trochoid/compute/uncertainty/chances.ts'
import { inputsOf } from '@trochoid/compute/uncertainty/inputs.ts'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { askChances } from '../../state/solver/askChances.ts'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { thresholds } from '../../state/thresholds.ts'
import { tolerances } from '../../state/tolerances.ts'
import type { View } from '../../state/view.ts'
import { Choose } from '../parts/Choose.tsx'
import { saveFile } from '../parts/files.ts'
import { useStore } from '../parts/useStore.ts'
import { chanceCsv, Table } from './Table.tsx'

/** What was worked out, and for what. */
export type Found = { readonly chances: readonly Chance[]; readonly weighed: readonly Weighed[]; readonly sheet: View['sheet']; readonly samples: number; readonly seed: number }
const choices = [500, 2000, 10_000] as const

/** The chance that each link holds: worked out in workers when asked, stopped at once when asked, marked when the build has moved on. */
export function Chances({ view, first }: { view: Store<View>; first: Found | null }) {
  const { sheet, fields, weighed, fine } = useStore(view)
  const system = useStore(systemStore)
  const said = useStore(tolerances)
  const [found, setFound] = useState(first)
  // The page was made with the tolerances that the handbook has.
  const [of, setOf] = useState<unknown>(Object.keys(said).length === 0 ? said : null)
  const [samples, setSamples] = useState(2000)
  const [seed, setSeed] = useState(1)
  const [running, setRunning] = useState(false)
  const [share, setShare] = useState(0)
  const [told, tell] = useState('')
  useEffect(() => {
    if (!running) return undefined
    setShare(0)
    const began = performance.now()
    const items = samples + 1 + 2 * inputsOf(sheet, fields, said).filter((input) => input.spread.half > 0).length
    const stop = askChances({ sheet, thresholds: thresholds.get(), tolerances: said, samples, seed }, items, (news) => {
      if (news.kind === 'progress') return setShare(Math.round(news.share * 100) / 100)
      setRunning(false)
      if (news.kind === 'failed') return tell(`It could not be worked out: ${news.says}`)
      setFound({ chances: news.chances, weighed, sheet, samples, seed })
      setOf(said)
      tell(`${samples} samples in ${((performance.now() - began) / 1000).toFixed(1)} s.`)
    })
    return () => { stop(); setRunning(false) }
  }, [running, sheet, said])
  // Progress comes many times a second: the table is drawn when what it tells has changed.
  const table = useMemo(() => found && <Table chances={found.chances} weighed={found.weighed} samples={found.samples} system={system} />, [found, system])
  const stale = found !== null && (found.sheet !== sheet || of !== said)
  return (
    <>
      <div class="row no-print">
        <Choose id="samples" label="Samples" value={String(samples)} options={choices.map((n) => [String(n), String(n)])} onChoose={(n) => setSamples(Number(n))} />
        <button type="button" disabled={running || !fine} onClick={() => { tell(''); setRunning(true) }}>Work out the chances</button>
        <button type="button" class="plain" disabled={running || !fine} onClick={() => { setSeed(seed + 1); tell(''); setRunning(true) }}>Draw anew</button>
        {running && <><progress value={share} aria-label="Drawing samples" /><button type="button" class="plain" onClick={() => { setRunning(false); tell('Stopped.') }}>Stop</button></>}
        {found && <button type="button" onClick={() => saveFile('chances.csv', 'text/csv', chanceCsv({ ...found, system }))}>Save as CSV</button>}
        {found && <button type="button" onClick={() => print()}>Print</button>}
      </div>
      <p role="status" class="small">{told}{stale && ' The build or a tolerance has changed since: these are the chances from before.'}</p>
      {found
        ? <div class={stale ? 'soft' : undefined}>{table}<p class="small soft">{found.sheet.name}: {found.samples} samples, seed {found.seed}.</p></div>
        : <p>Nothing is worked out for this build yet.</p>}
    </>
  )
}
