import { longestNote } from '@trochoid/compute/link/note.ts'
import { useEffect, useState } from 'preact/hooks'
import { useStore } from '../parts/useStore.ts'
import { linkText, noteText, tablesText } from './link.ts'
import type { Model } from './model.ts'

/** The calculator with its numbers, as an address that can be sent. */
export function LinkFold({ model, uid, page }: { model: Model; uid: string; page: string }) {
  const now = useStore(model.state)
  const [host, setHost] = useState('')
  const [tables, setTables] = useState('')
  const [note, setNote] = useState('')
  const [told, tell] = useState('')
  useEffect(() => setHost(location.origin), [])
  useEffect(() => {
    let wanted = true
    void tablesText(now).then((text) => { if (wanted) setTables(text) })
    return () => { wanted = false }
  }, [now.values])
  const link = `${host}${page}#${linkText(now)}${tables}${noteText(note)}`
  const copy = () => navigator.clipboard.writeText(link).then(() => tell('Copied.'), () => tell('The browser did not allow copying: mark the address and copy it yourself.'))
  return (
    <div class="field">
      <label for={`${uid}-send-note`}>A note to whoever opens it, up to {longestNote} characters</label>
      <input id={`${uid}-send-note`} type="text" maxLength={longestNote} value={note} onInput={(e) => setNote(e.currentTarget.value)} />
      <label for={`${uid}-link`}>This address opens the calculator with these numbers</label>
      <input id={`${uid}-link`} type="text" readonly value={link} onFocus={(e) => e.currentTarget.select()} />
      <p class="hint">The address carries the numbers itself: nothing is sent or stored anywhere for it.</p>
      <p class="row"><button type="button" onClick={() => void copy()}>Copy the address</button> <span role="status">{told}</span></p>
    </div>
  )
}
