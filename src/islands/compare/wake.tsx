import type { Side } from '@trochoid/compute/comparison/side.ts'
import { hydrate, render } from 'preact'
import { anyBuilds } from '../../state/anyBuild.ts'
import { sheetOf } from '../../state/build.ts'
import { builds, demoChosen } from '../../state/own.ts'
import { allFields, demoSheets, look } from '../../state/solver/look.ts'
import type { Told } from '../sweep/values.ts'
import { pairIn, type Pair } from './pair.ts'
import { Two } from './Two.tsx'

/** Makes the page of two builds live: those of its address, else the build that is shown and an invented one. */
export async function wakeCompare(root: HTMLElement): Promise<void> {
  const fields = await allFields()
  const values = JSON.parse(root.dataset.values!) as readonly Told[]
  const known = new Map(anyBuilds(builds.get(), demoSheets.get()))
  const asked = pairIn(location.hash, builds.get().chosen)
  const shown = known.has(builds.get().chosen) ? builds.get().chosen : demoChosen
  // A build that was removed since the address was made leaves its place to the one that is shown.
  const pair: Pair = { first: known.has(asked.first) ? asked.first : shown, second: known.has(asked.second) ? asked.second : shown }
  const side = async (id: string): Promise<Side> => { const sheet = known.get(id) ?? sheetOf(builds.get()); return { sheet, ...(await look(sheet)) } }
  const [first, second] = await Promise.all([side(pair.first), side(pair.second)])
  const place = root.querySelector('[data-part=two]')!
  const what = <Two pair={pair} first={first} second={second} fields={fields} values={values} sheetPage={root.dataset.sheetPage!} />
  if (pair.first === demoChosen && pair.second === 'demo:track') return hydrate(what, place)
  place.replaceChildren()
  render(what, place)
}
