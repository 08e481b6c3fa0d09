import type { Worth } from '@trochoid/compute/build/measureNext.ts'
import { hydrate, render, type ComponentChild } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { Margins, type Told } from './Margins.tsx'
import { Next } from './Next.tsx'

/** Makes the margins page live: from the build it was made with, or the reader's own. */
export async function wakeMargins(root: HTMLElement): Promise<void> {
  const view = await follow()
  const told = JSON.parse(root.dataset.told!) as Told
  const first = JSON.parse(root.dataset.first!) as readonly Worth[]
  const same = builds.get().chosen === demoChosen
  const draw = (part: string, what: ComponentChild) => {
    const place = root.querySelector(`[data-part=${part}]`)!
    if (same) return hydrate(what, place)
    place.replaceChildren()
    render(what, place)
  }
  draw('which', <WhichBuild sheetPage={root.dataset.sheetPage!} />)
  draw('margins', <Margins view={view} told={told} />)
  draw('next', <Next view={view} first={same ? first : []} glossary={root.dataset.glossary!} />)
}
