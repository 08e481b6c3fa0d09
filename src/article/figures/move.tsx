import { hydrate } from 'preact'
import { system } from '../../state/system.ts'
import { figureAt } from './load.ts'
import { Parts } from './Parts.tsx'

/** Brings a figure that moves to life with the numbers the page was built with. */
export async function move(place: HTMLElement): Promise<void> {
  const id = place.dataset.figure!
  const figure = await figureAt(place)
  const data: unknown = JSON.parse(place.dataset.from!)
  hydrate(<Parts figure={figure} data={data} system={system.get()} id={id} />, place)
}
