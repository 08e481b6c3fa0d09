import { liesOutside, wantedOf } from '@trochoid/compute/record/expected.ts'
import { groups, type Measured } from '@trochoid/compute/record/items.ts'
import { emptyRecord } from '@trochoid/compute/record/record.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { shownUnit, write, type System } from '@trochoid/compute/quantity/write.ts'
import type { View } from '../../state/view.ts'

/** The record as it is printed: every line, the empty ones to be filled in by hand. */
export function RecordPrint({ view: { sheet, fields }, system }: { view: View; system: System }) {
  const record = sheet.record ?? emptyRecord
  const values = new Map([...fields].map(([path, field]) => [path, valueAt(sheet, field) as unknown]))
  return (
    <>
      {groups.map((group) => (
        <section key={group.id}>
          <h3>{group.title}</h3>
          <div class="scroll" tabIndex={0} role="group" aria-label={group.title}><table>
            <thead><tr><th scope="col">What</th><th scope="col">{group.steps ? 'Done' : 'As found'}</th>{group.measured && <th scope="col">Expected</th>}<th scope="col">Who, when</th></tr></thead>
            <tbody>
              {[...(group.measured ?? []), ...(group.chosen ?? []), ...(group.steps ?? [])].map((line) => {
                const said = record.lines[line.id]
                const item = isMeasured(line) ? line : null
                const unit = item ? shownUnit(item.quantity, system) : ''
                const wanted = item && wantedOf(item, values)
                const outside = liesOutside(said?.value, wanted)
                return (
                  <tr key={line.id}>
                    <th scope="row">{line.name}</th>
                    <td>{item ? (said?.value === undefined ? '' : `${write(said.value, item.quantity, unit)}${outside ? ', outside' : ''}`) : said?.text ?? (said?.done ? 'yes' : '')}</td>
                    {item && <td>{wanted ? `${write(wanted.low, item.quantity, unit)} to ${write(wanted.high, item.quantity, unit)}` : 'none stated'}</td>}
                    <td class="small">{[said?.by, said?.on].filter(Boolean).join(', ')}</td>
                  </tr>
                )
              })}
            </tbody>
          </table></div>
        </section>
      ))}
      {record.notes !== '' && <><h3>Notes</h3><p>{record.notes}</p></>}
    </>
  )
}

const isMeasured = (line: { readonly id: string; readonly name: string }): line is Measured => 'expected' in line
