import { hydrate, render, type ComponentChild } from 'preact'
import type { Chance } from '@trochoid/compute/uncertainty/chances.ts'
import { builds, demoChosen } from '../../state/own.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { Chances, type Found } from './Chances.tsx'
import { Tolerances } from './Tolerances.tsx'
import { unpacked } from './packed.ts'

/** Makes the page of chances live: from the build it was made with, or the reader’s own. */
export async function wakeChance(root: HTMLElement): Promise<void> {
  const view = await follow()
  const same = builds.get().chosen === demoChosen
  const { sheet, weighed } = view.get()
  const made = JSON.parse(root.dataset.first!) as { readonly chances: readonly Chance[]; readonly samples: number; readonly seed: number }
  const first: Found | null = same ? { ...made, chances: made.chances.map(unpacked), sheet, weighed } : null
  const draw = (part: string, what: ComponentChild) => {
    const place = root.querySelector(`[data-part=${part}]`)!
    if (same) return hydrate(what, place)
    place.replaceChildren()
    render(what, place)
  }
  draw('which', <WhichBuild sheetPage={root.dataset.sheetPage!} />)
  draw('chances', <Chances view={view} first={first} />)
  draw('tolerances', <Tolerances view={view} />)
}
