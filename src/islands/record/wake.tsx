import { hydrate, render, type ComponentChild } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { RecordDesk } from './RecordDesk.tsx'

/** Makes the record live. */
export async function wakeRecord(root: HTMLElement): Promise<void> {
  const view = await follow()
  const same = builds.get().chosen === demoChosen
  const draw = (part: string, what: ComponentChild) => {
    const place = root.querySelector(`[data-part=${part}]`)!
    if (same) return hydrate(what, place)
    place.replaceChildren()
    render(what, place)
  }
  draw('which', <WhichBuild sheetPage={root.dataset.sheetPage!} />)
  draw('record', <RecordDesk view={view} />)
}
