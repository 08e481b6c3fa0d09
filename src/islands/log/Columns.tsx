import { channelIds, channels, unitsFor, type ChannelId, type Mapping, type Meaning } from '@trochoid/compute/log/channels.ts'
import type { Opened } from '../../state/drives/tasks.ts'

/** What each column is taken for; the reader's word counts, and is remembered for the next file of the same logger. */
export function Columns({ opened, onChange }: { opened: Opened; onChange: (mapping: Mapping) => void }) {
  const { names, units, mapping } = opened
  const set = (column: number, meaning: Meaning | null): void => {
    // A channel stands in one column: taken here, it is left elsewhere.
    const others = Object.entries(mapping).filter(([k, m]) => Number(k) !== column && m.channel !== meaning?.channel)
    onChange(Object.fromEntries(meaning ? [...others, [column, meaning]] : others))
  }
  const open = opened.fault !== null
  return (
    <details open={open} class="no-print">
      <summary>Columns: {Object.keys(mapping).length} of {names.length} are used</summary>
      <div class="scroll" tabindex={0} role="group" aria-label="Columns of the log">
        <table>
          <thead><tr><th scope="col">Column</th><th scope="col">Is taken for</th><th scope="col">In</th></tr></thead>
          <tbody>
            {names.map((name, i) => {
              const meaning = mapping[i]
              return (
                <tr key={i}>
                  <th scope="row">{name}{units[i] ? `, ${units[i]}` : ''}</th>
                  <td><select aria-label={`${name} is taken for`} value={meaning?.channel ?? ''} onChange={(e) => { const id = e.currentTarget.value as ChannelId | ''; set(i, id === '' ? null : { channel: id, unit: channels[id].bare }) }}>
                    <option value="">nothing</option>
                    {channelIds.map((id) => <option key={id} value={id} selected={meaning?.channel === id}>{channels[id].quantity.name}</option>)}
                  </select></td>
                  <td>{meaning && <select aria-label={`Unit of ${name}`} value={meaning.unit} onChange={(e) => set(i, { ...meaning, unit: e.currentTarget.value })}>{unitsFor(meaning.channel).map((u) => <option key={u.name} value={u.name} selected={u.name === meaning.unit}>{u.name === '1' ? 'as it stands' : u.name}</option>)}</select>}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
    </details>
  )
}
