import type { System } from '@trochoid/compute/quantity/write.ts'
import type { AnyFigure, Table } from './figure.ts'

/** What stands under a figure's title: drawing, summary in words, table of its data. */
export function Parts({ figure, data, system, id }: { figure: AnyFigure; data: unknown; system: System; id: string }) {
  const { Picture } = figure
  return (
    <>
      <Picture data={data} system={system} />
      <p class="small soft">{figure.summary(data, system)}</p>
      <details>
        <summary class="small">Table of the data</summary>
        <Data table={figure.table(data, system)} label={`Data of ${figure.title}`} id={id} />
      </details>
    </>
  )
}

function Data({ table, label }: { table: Table; label: string; id: string }) {
  return (
    <div class="scroll" tabindex={0} role="group" aria-label={label}>
      <table>
        <thead><tr>{table.head.map((h, i) => <th scope="col" class={i > 0 ? 'n' : undefined} key={h}>{h}</th>)}</tr></thead>
        <tbody>{table.rows.map((row, r) => <tr key={r}>{row.map((cell, i) => (i === 0 ? <th scope="row" key={i}>{cell}</th> : <td class="n" key={i}>{cell}</td>))}</tr>)}</tbody>
      </table>
    </div>
  )
}
