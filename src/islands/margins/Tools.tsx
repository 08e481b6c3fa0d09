import { quantityOf, sentence, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import { inUnit, shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { saveFile, csv } from '../parts/files.ts'
import { fromWords } from './words.ts'

/** The list as CSV or on paper. */
export function Tools({ weighed, system, nameOf }: { weighed: readonly Weighed[]; system: System; nameOf: (path: string) => string }) {
  const rows = () => weighed.map((w) => {
    const number = (si: number | null, of: Weighed['margin']['demand']): readonly [string, string] => (si === null ? ['', ''] : [String(inUnit(si, quantityOf(of), shownUnit(quantityOf(of), system))), shownUnit(quantityOf(of), system)])
    return [w.margin.title, stateWord(w), ...number(w.demand, w.margin.demand), ...number(w.capacity, w.margin.capacity), w.left === null ? '' : String(w.left), w.speed === null ? '' : String(Math.round((w.speed * 30) / Math.PI)), fromWords[w.from], sentence(w, system, nameOf)]
  })
  const head = ['link', 'state', 'asks', 'unit', 'gives', 'unit', 'left, share or SI difference', 'worst at, rpm', 'rests on', 'in words']
  return (
    <>
      <button type="button" onClick={() => saveFile('margins.csv', 'text/csv', csv([head, ...rows()]))}>Save as CSV</button>
      <button type="button" onClick={() => print()}>Print</button>
    </>
  )
}
