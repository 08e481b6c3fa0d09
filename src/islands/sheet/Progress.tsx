import type { Field } from '@trochoid/compute/build/field.ts'
import { fromAt, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'

/** How much of the sheet is known, and how well. */
export function Progress({ sheet, fields }: { sheet: Sheet; fields: readonly Field[] }) {
  const all = fields.length
  const count = (test: (f: Field) => boolean) => fields.filter(test).length
  const unknown = count((f) => valueAt(sheet, f) === null)
  const measured = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'measured')
  const maker = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'maker')
  const guess = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'guess')
  const x = (n: number) => (n / all) * 300
  return (
    <div class="progress">
      <svg viewBox="0 0 300 8" preserveAspectRatio="none" aria-hidden="true"><rect class="area" width="300" height="8" /><rect class="fill-accent" width={x(measured)} height="8" /><rect class="fill" x={x(measured)} width={x(maker)} height="8" /><rect class="fill-warn" x={x(measured + maker)} width={x(guess)} height="8" /></svg>
      <p class="small">Of {all}: {measured} measured, {maker} from a maker, {guess} guessed, {all - measured - maker - guess - unknown} common practice, {unknown} not known.</p>
    </div>
  )
}
