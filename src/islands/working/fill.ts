import type { Entry, Step } from '@trochoid/compute/formula/trace.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { valueAtPlace, writeValue } from './value.ts'
import { slotOf } from './ways.ts'

/**
 * Writes a working into the page: one item per step, each a copy of the item that the page was built with for that formula,
 * its slots filled from the trace.
 */
export function fillWorking(root: Element, trace: readonly Entry[], system: System): void {
  const list = root.querySelector('.steps')!
  const models = modelsOf(root)
  list.replaceChildren(...trace.flatMap((entry) => {
    const item = models.get(entry.id)?.cloneNode(true) as HTMLElement | undefined
    if (!item) return []
    item.dataset.depth = String(Math.min(entry.depth, 2))
    if (entry.id === 'root') {
      const found = entry as Extract<Entry, { id: 'root' }>
      put(item, 'name', found.name); put(item, 'value', writeNumber(found.value, 5)); put(item, 'residual', writeNumber(found.residual, 2))
    } else fillStep(item, entry as Step, system)
    return [item]
  }))
}

function fillStep(item: HTMLElement, step: Step, system: System): void {
  const names = new Map<string, string>()
  for (const slot of item.querySelectorAll('[data-v]')) {
    const [place, way] = slotOf(slot.getAttribute('data-v')!)
    names.set(place, way.name)
    // A constant stands there as it is.
    if (!place.startsWith('c.')) slot.textContent = writeValue(valueAtPlace(place, step), way, system)
  }
  if (item.dataset.range === 'none') return
  item.dataset.range = step.outside.length > 0 ? 'outside' : 'inside'
  item.querySelector('.range')!.textContent = rangeWords(step.outside, (name) => names.get(`i.${name}`))
}

export const rangeWords = (outside: readonly string[], nameOf: (input: string) => string | undefined): string =>
  outside.length > 0 ? `Outside the range its source states: ${outside.map((name) => nameOf(name) ?? name).join(', ')}` : 'In the range its source states'

const put = (item: Element, place: string, text: string): void => { for (const slot of item.querySelectorAll(`[data-v="${place}"]`)) slot.textContent = text }

const kept = new WeakMap<Element, Map<string, Element>>()
/** One item for every formula the calculation can reach: those of the first working, and those put by in a template. */
function modelsOf(root: Element): Map<string, Element> {
  let models = kept.get(root)
  if (!models) {
    models = new Map()
    const spare = root.querySelector('template')?.content.children ?? []
    for (const item of [...root.querySelectorAll('.step'), ...spare]) models.set((item as HTMLElement).dataset.formula!, item)
    kept.set(root, models)
  }
  return models
}
