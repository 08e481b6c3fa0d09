import { hydrate, render } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { LogCheck } from './LogCheck.tsx'

/** Makes the log page live. What it was built with stays until a log is open. */
export async function wakeLog(root: HTMLElement): Promise<void> {
  const view = await follow()
  const part = (name: string): HTMLElement => root.querySelector(`[data-part=${name}]`)!
  const which = <WhichBuild sheetPage={root.dataset.sheetPage!} />
  if (builds.get().chosen === demoChosen) hydrate(which, part('which'))
  else { part('which').replaceChildren(); render(which, part('which')) }
  hydrate(<LogCheck view={view} onFirst={() => root.querySelector('[data-part=example]')?.remove()} />, part('log'))
}
