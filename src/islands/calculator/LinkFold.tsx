import { useEffect, useState } from 'preact/hooks'
import { useStore } from '../parts/useStore.ts'
import { linkText } from './link.ts'
import type { Model } from './model.ts'

/** The calculator with its numbers, as an address that can be sent. */
export function LinkFold({ model, uid, page }: { model: Model; uid: string; page: string }) {
  const now = useStore(model.state)
  const [host, setHost] = useState('')
  const [told, tell] = useState('')
  useEffect(() => setHost(location.origin), [])
  const link = `${host}${page}#${linkText(now)}`
  const copy = () => navigator.clipboard.writeText(link).then(() => tell('Copied.'), () => tell('The browser did not allow copying: mark the address and copy it yourself.'))
  return (
    <div class="field">
      <label for={`${uid}-link`}>This address opens the calculator with these numbers</label>
      <input id={`${uid}-link`} type="text" readonly value={link} onFocus={(e) => e.currentTarget.select()} />
      <p class="row"><button type="button" onClick={() => void copy()}>Copy the address</button> <span role="status">{told}</span></p>
    </div>
  )
}
