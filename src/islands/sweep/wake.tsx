import { hydrate, render, type ComponentChild } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { Sweep } from './Sweep.tsx'
import type { Told } from './values.ts'

/** Makes the sweep page live. */
export async function wakeSweep(root: HTMLElement): Promise<void> {
  const view = await follow()
  const { values, themes } = JSON.parse(root.dataset.told!) as { values: readonly Told[]; themes: Readonly<Record<string, string>> }
  const same = builds.get().chosen === demoChosen
  const draw = (part: string, what: ComponentChild) => {
    const place = root.querySelector(`[data-part=${part}]`)!
    if (same) return hydrate(what, place)
    place.replaceChildren()
    render(what, place)
  }
  draw('which', <WhichBuild sheetPage={root.dataset.sheetPage!} />)
  draw('sweep', <Sweep view={view} values={values} themes={themes} />)
}
