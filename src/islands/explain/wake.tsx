import { buildFragment, buildIn } from '@trochoid/compute/link/fragment.ts'
import { render } from 'preact'
import { builds, sentChosen } from '../../state/own.ts'
import { store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { follow, namer } from '../../state/view.ts'
import { useStore } from '../parts/useStore.ts'
import { SendLink } from '../sheet/SendLink.tsx'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import { Plain } from './Plain.tsx'
import { Tools } from './Tools.tsx'

/** Shows one margin alone, the one that the address names or else the worst, with the numbers of the build that is shown. */
export async function wakeExplain(root: HTMLElement): Promise<void> {
  const view = await follow()
  const sections = [...root.querySelectorAll<HTMLElement>('section[id]')]
  const options = sections.map(({ id, dataset }) => [id, dataset.title!] as const)
  const named = (): string | undefined => {
    const place = buildIn(location.hash)?.at ?? decoded(location.hash.slice(1))
    return options.find(([id]) => id === place)?.[0]
  }
  const worst = () => view.get().weighed.find((w) => !w.margin.always)!.id
  const chosen = store(named() ?? worst())

  const draw = () => {
    const { weighed, fields } = view.get()
    for (const section of sections) {
      section.hidden = section.id !== chosen.get()
      section.classList.remove('other')
    }
    const place = root.querySelector<HTMLElement>(`#${chosen.get()} [data-said]`)!
    // Not hydrated: what the page was built with speaks of another build.
    if (!place.dataset.live) place.replaceChildren()
    place.dataset.live = 'yes'
    render(<Plain of={weighed.find(({ id }) => id === chosen.get())!} system={systemStore.get()} nameOf={namer(fields)} />, place)
  }
  const choose = (id: string) => {
    // A build that was sent goes on being named by the address; one's own is found in this browser.
    const code = builds.get().chosen === sentChosen ? buildIn(location.hash)?.code : undefined
    history.replaceState(history.state, '', code === undefined ? `#${id}` : buildFragment(code, id))
    chosen.set(id)
  }
  function Chosen() {
    return <Tools options={options} chosen={useStore(chosen)} onChoose={choose} />
  }
  function Send() {
    const at = useStore(chosen)
    return <SendLink sheet={useStore(view).sheet} at={at} />
  }
  const part = (name: string): HTMLElement => root.querySelector(`[data-part=${name}]`)!
  for (const name of ['which', 'tools']) part(name).replaceChildren()
  render(<WhichBuild sheetPage={root.dataset.sheetPage!} />, part('which'))
  render(<Chosen />, part('tools'))
  render(<Send />, part('send'))
  draw()
  for (const of of [view, systemStore, chosen]) of.watch(draw)
  addEventListener('hashchange', () => { const id = named(); if (id) chosen.set(id) })
}

function decoded(text: string): string {
  try { return decodeURIComponent(text) } catch { return text }
}
