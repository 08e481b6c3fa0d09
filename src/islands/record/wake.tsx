import { hydrate, render, type ComponentChild } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import type { Store } from '../../state/store.ts'
import { follow, type View } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'

/** Makes a page of the record live: which build it is of, and what is written into it. */
export async function wakeDesk(root: HTMLElement, desk: (view: Store<View>) => ComponentChild): Promise<void> {
  const view = await follow()
  const same = builds.get().chosen === demoChosen
  const draw = (part: string, what: ComponentChild) => {
    const place = root.querySelector(`[data-part=${part}]`)!
    if (same) return hydrate(what, place)
    place.replaceChildren()
    render(what, place)
  }
  draw('which', <WhichBuild sheetPage={root.dataset.sheetPage!} />)
  draw('record', desk(view))
}
