import { hydrate } from 'preact'
import { Workshop } from './Workshop.tsx'

/** Makes the map workshop live. */
export function wakeWorkshop(root: HTMLElement): void {
  hydrate(<Workshop />, root)
}
