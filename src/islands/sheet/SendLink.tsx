import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { buildFragment } from '@trochoid/compute/link/fragment.ts'
import { longestNote } from '@trochoid/compute/link/note.ts'
import { useState } from 'preact/hooks'
import { allFields } from '../../state/solver/look.ts'

/** The whole build as an address, opened at a place of this page where one is named. It carries the numbers itself: nothing is stored anywhere for it. */
export function SendLink({ sheet, at = '' }: { sheet: Sheet; at?: string }) {
  const [note, setNote] = useState('')
  const [link, setLink] = useState<{ readonly text: string; readonly of: Sheet; readonly note: string; readonly at: string } | null>(null)
  const [told, tell] = useState('')
  const make = async () => {
    const { buildCode } = await import('@trochoid/compute/link/buildLink.ts')
    const text = `${location.origin}${location.pathname}${buildFragment(await buildCode(sheet, await allFields(), note), at)}`
    setLink({ text, of: sheet, note, at })
    tell(`The address is ready, ${text.length} characters long.`)
  }
  const copy = (text: string) => navigator.clipboard.writeText(text).then(() => tell('Copied.'), () => tell('The browser did not allow copying: mark the address and copy it yourself.'))
  const stale = link !== null && (link.of !== sheet || link.note !== note || link.at !== at)
  return (
    <details class="fold no-print" data-send>
      <summary>Send it as a link</summary>
      <p class="small">The address itself carries the numbers, the choices and one note. No name, no remark beside a number and nothing else is in it, and nothing is uploaded: whoever has the address has the numbers. It opens beside the receiver’s own builds and changes none of them.</p>
      <div class="field">
        <label for="send-note">A note to whoever opens it, up to {longestNote} characters</label>
        <input id="send-note" type="text" maxLength={longestNote} value={note} onInput={(e) => setNote(e.currentTarget.value)} />
      </div>
      <p class="row"><button type="button" onClick={() => void make()}>Make the address</button> {link && !stale && <button type="button" onClick={() => void copy(link.text)}>Copy the address</button>} <span role="status">{told}</span></p>
      {link && (
        <div class="field">
          <label for="send-link">This address opens the build</label>
          <input id="send-link" type="text" readonly value={link.text} onFocus={(e) => e.currentTarget.select()} />
          {stale && <p class="doubt">What it should carry has changed since: make the address again.</p>}
        </div>
      )}
    </details>
  )
}
