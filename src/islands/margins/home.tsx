import { render } from 'preact'
import { sheetOf } from '../../state/build.ts'
import { builds } from '../../state/own.ts'
import { system as systemStore } from '../../state/system.ts'
import { follow, namer, type View } from '../../state/view.ts'
import type { Store } from '../../state/store.ts'
import { useStore } from '../parts/useStore.ts'
import { Line } from './Line.tsx'
import { verdict } from './Margins.tsx'

/** The first page speaks of the reader's own build where there is one. */
export async function wakeHome(root: HTMLElement): Promise<void> {
  const view = await follow()
  const place = root.querySelector('[data-part=verdict]')!
  root.querySelector('[data-whose]')!.textContent = `${sheetOf(builds.get()).name}, now`
  place.replaceChildren()
  render(<Verdict view={view} />, place)
}

function Verdict({ view }: { view: Store<View> }) {
  const { weighed, fields } = useStore(view)
  const system = useStore(systemStore)
  const knock = weighed.filter((w) => w.margin.always)
  return (
    <>
      <p>{verdict(weighed)}</p>
      {[...weighed.filter((w) => w.left !== null && !w.margin.always).slice(0, 3), ...knock].map((w) => <div key={w.id} class="margin" data-state={w.state}><Line of={w} system={system} nameOf={namer(fields)} /></div>)}
    </>
  )
}
