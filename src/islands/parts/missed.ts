/** What a reader does while the code is still on its way: a press or a number that nothing was there to hear. */
export type Missed = { /** Does it again, now that something hears it. */ readonly again: () => void }

const told = ['click', 'input', 'change'] as const

export function missed(root: HTMLElement): Missed {
  const kept = new Map<HTMLElement, { readonly kind: string; readonly value: string }>()
  const keep = ({ type, target }: Event) => {
    const at = type === 'click' ? (target as Element).closest('button') : (target as HTMLInputElement)
    if (at && at.type !== 'file') kept.set(at, { kind: type, value: at.value })
  }
  for (const name of told) root.addEventListener(name, keep)
  return {
    again() {
      for (const name of told) root.removeEventListener(name, keep)
      for (const [was, { kind, value }] of kept) {
        const at = (was.isConnected ? was : document.getElementById(was.id)) as HTMLInputElement | null
        if (!at) continue
        if (kind === 'click') { at.click(); continue }
        at.value = value
        at.dispatchEvent(new Event(kind, { bubbles: true }))
      }
    },
  }
}
