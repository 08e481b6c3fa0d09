import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { render } from 'preact'
import { sheetOf } from '../../state/build.ts'
import { builds, whose } from '../../state/own.ts'
import { lookedOwn } from '../../state/ownValues.ts'
import { look } from '../../state/solver/look.ts'
import { system } from '../../state/system.ts'
import { figureAt } from './load.ts'
import { Parts } from './Parts.tsx'

const drawnFrom = { own: 'Drawn from your build.', sent: 'Drawn from the build that was sent to you.', demo: 'Drawn from an invented build.' }

/** Draws a figure again from the build that is shown, in the reader's units. */
export async function redraw(place: HTMLElement): Promise<void> {
  const id = place.dataset.figure!
  const figure = await figureAt(place)
  const draw = async () => {
    const { solved, weighed } = await lookedOwn()
    const sheet = sheetOf(builds.get())
    const others = await Promise.all((figure.beside?.(sheet) ?? []).map((other) => look(other)))
    const data = figure.from({ sheet, solved, point: demoPoint(solved), weighed, beside: others.map((o) => o.solved), weighedBeside: others.map((o) => o.weighed) })
    place.closest('figure')?.querySelector('[data-whose]')?.replaceChildren(drawnFrom[whose(builds.get())])
    render(<Parts figure={figure} data={data} system={system.get()} id={id} />, place)
  }
  // Drawn anew rather than hydrated, also where it already moved with the numbers the page was built with.
  render(null, place)
  place.replaceChildren()
  await draw()
  builds.watch(() => void draw())
  system.watch(() => void draw())
}
