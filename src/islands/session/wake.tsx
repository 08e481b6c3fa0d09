import { hydrate, render } from 'preact'
import { builds, demoChosen } from '../../state/own.ts'
import { system } from '../../state/system.ts'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { Session, type Shown } from './Session.tsx'
import { SessionView } from './SessionView.tsx'

/** Makes the session page live. What it was built with stays until there is something else to show. */
export async function wakeSession(root: HTMLElement): Promise<void> {
  const view = await follow()
  const part = (name: string): HTMLElement => root.querySelector(`[data-part=${name}]`)!
  const shown = part('session')
  let own = false
  const show = ({ result, from100to200 }: Shown): void => {
    if (!own) { shown.replaceChildren(); own = true }
    render(<SessionView result={result} from100to200={from100to200} system={system.get()} />, shown)
  }
  const same = builds.get().chosen === demoChosen
  if (same) hydrate(<WhichBuild sheetPage={root.dataset.sheetPage!} />, part('which'))
  else { part('which').replaceChildren(); render(<WhichBuild sheetPage={root.dataset.sheetPage!} />, part('which')) }
  hydrate(<Session view={view} show={show} fresh={!same || system.get() !== 'metric'} />, part('asked'))
}
