import { render, type ComponentType } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { builds, demoChosen, followed, ready, saved } from '../../state/own.ts'
import { namesFrom } from '../../state/kept.ts'
import { useStore } from '../parts/useStore.ts'

let drawn = false
/** What the reader must be told on whichever page it happens: a build that was sent, changes that are not kept. */
export async function wakeNotices(): Promise<void> {
  if (drawn) return
  drawn = true
  const place = document.getElementById('notices')!
  place.hidden = false
  await ready
  const Banner = location.hash.startsWith('#build=') ? await sentBanner() : null
  // The build sheet says itself what is not kept.
  render(<>{Banner}<NotFollowed /><Lately />{document.querySelector('[data-sheet]') ? null : <NotKept />}</>, place)
}

async function sentBanner() {
  const [{ SentBanner }, { allFields }, { carryAlong }] = await Promise.all([import('./Sent.tsx'), import('../../state/solver/look.ts'), import('./carryAlong.ts')])
  carryAlong()
  return <SentBanner fields={await allFields()} />
}

/** An article or a calculator was opened with the demo build's numbers, and a number was put in a build of the reader's own. */
function NotFollowed() {
  const now = useStore(builds)
  if (useStore(followed) || now.chosen === demoChosen) return null
  return <p role="status">You have a build of your own now. The numbers elsewhere on this page are still those of the invented demo build. <button type="button" onClick={() => followed.set(true)}>Show this page with my build</button></p>
}

/** What corrected formulas have moved. Its store comes with the pages that weigh a build. */
function Lately() {
  const [part, setPart] = useState<{ readonly Corrected: ComponentType } | null>(null)
  useEffect(() => { if (namesFrom('weighed.').length > 0) void import('./Corrected.tsx').then(setPart) }, [])
  return part && <part.Corrected />
}

/** Loaded when there is something to say. */
function NotKept() {
  const state = useStore(saved)
  const [part, setPart] = useState<{ readonly Unkept: ComponentType<{ state: Exclude<typeof state, 'saved' | null> }> } | null>(null)
  const wanted = state !== null && state !== 'saved'
  useEffect(() => { if (wanted) void import('./Unkept.tsx').then(setPart) }, [wanted])
  return wanted && part ? <part.Unkept state={state} /> : null
}
