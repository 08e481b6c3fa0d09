import type { Weighed } from '@trochoid/compute/build/margins.ts'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import type { View } from '../../state/view.ts'
import { loadCalculation } from '../calculator/load.ts'
import { fillWorking } from '../working/fill.ts'

/** Which calculation makes a value of the solved point: its file and its page. Told by the page as it was built. */
export type Makers = Readonly<Record<string, { readonly file: string; readonly page: string; readonly title: string }>>

/** The worst links whose demand or capacity a calculation makes. */
export const worstOf = (weighed: readonly Weighed[], makers: Makers, count = 5): readonly Weighed[] =>
  weighed.filter((w) => !w.margin.always && w.left !== null && makerOf(w, makers) !== undefined).slice(0, count)

export const makerOf = ({ margin }: Weighed, makers: Makers) => makers[margin.demand.path] ?? makers[margin.capacity.path]

/** Writes the working of one link at its worst speed into a place: the calculator's own page gives the form, the build the numbers. */
export async function workingInto(place: HTMLElement, of: Weighed, view: View, makers: Makers, system: System): Promise<void> {
  const maker = makerOf(of, makers)!
  const [calculation, page] = await Promise.all([
    loadCalculation(maker.file),
    fetch(maker.page).then((answer) => answer.text()).then((html) => new DOMParser().parseFromString(html, 'text/html')),
  ])
  const form = page.querySelector('[data-working]')
  if (!form) return
  form.querySelector('[data-copies]')?.remove()
  const root = document.importNode(form, true)
  const point = view.solved.points.find((p) => p.speed === of.speed) ?? (of.margin.over === 'idle' ? view.solved.idle : view.solved.points[0])
  try {
    fillWorking(root, run(calculation, valuesFor(calculation, view.sheet, { ...view.solved.build, ...point?.values })).trace, system)
    place.replaceChildren(root)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    place.textContent = error.message
  }
}
