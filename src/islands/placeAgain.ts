import type { Place, Typed } from './place.ts'

/** Brings a page back to how it was left: folds first, because they move what is below them. */
export function restore({ top, folds: open, fields: texts }: Place, folds: readonly HTMLDetailsElement[], fields: readonly Typed[], nameOf: (fold: HTMLDetailsElement) => string): void {
  for (const fold of folds) if (open.includes(nameOf(fold))) fold.open = true
  scrollTo(0, top)
  for (const field of fields) {
    const text = texts[field.id]
    if (text === undefined || field.value === text) continue
    field.value = text
    // Whatever the field belongs to wakes, and reads what stands in it.
    for (const name of ['pointerover', 'input']) field.dispatchEvent(new Event(name, { bubbles: true }))
  }
}
