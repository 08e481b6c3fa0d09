import type { Field } from '@trochoid/compute/build/field.ts'
import { hydrate, render } from 'preact'
import { sheetOf } from '../../state/build.ts'
import { builds, demoChosen, isOwn } from '../../state/own.ts'
import { allFields, look } from '../../state/solver/look.ts'
import { system } from '../../state/system.ts'
import { useStore } from '../parts/useStore.ts'
import { Desk } from './Desk.tsx'
import { Progress } from './Progress.tsx'
import { undoByKeys } from './undoByKeys.ts'
import { Entry } from './Entry.tsx'

/** Makes the build sheet live: its head at once, the fields of a section when it is open. */
export async function wakeSheet(root: HTMLElement): Promise<void> {
  const fields = await allFields()
  const same = builds.get().chosen === demoChosen
  const draw = same ? hydrate : (what: Parameters<typeof render>[0], place: Element) => { place.replaceChildren(); render(what, place) }
  draw(<Desk margins={root.dataset.margins!} fields={fields} />, root.querySelector('[data-part=desk]')!)
  undoByKeys()
  void weighNow()
  builds.watch(weighSoon)
  for (const section of root.querySelectorAll<HTMLDetailsElement>('details[data-section]')) {
    const places = [...section.querySelectorAll<HTMLElement>('[data-field]')]
    const own = places.flatMap((place) => { const f = fields.get(place.dataset.field!); return f ? [f] : [] })
    draw(<Known fields={own} />, section.querySelector('[data-part=known]')!)
    const wake = () => {
      if (!section.open || section.dataset.woken !== undefined) return
      section.dataset.woken = ''
      const still = builds.get().chosen === demoChosen
      for (const place of places) {
        const field = fields.get(place.dataset.field!)
        if (!field) continue
        if (!still || system.get() !== 'metric') place.replaceChildren()
        ;(still && system.get() === 'metric' ? hydrate : render)(<OwnEntry field={field} fields={fields} />, place)
      }
    }
    section.addEventListener('toggle', wake)
    // Paper has nothing to press: every section is printed, with the numbers of the build that is shown.
    addEventListener('beforeprint', () => { section.open = true; wake() })
    wake()
  }
}

/** After typing has stopped for so long, in ms. */
const pause = 1500
let timer: ReturnType<typeof setTimeout> | undefined
function weighSoon(): void {
  clearTimeout(timer)
  timer = setTimeout(() => void weighNow(), pause)
}
/** Weighs the reader's build as it stands, so that a later edition of the formulas can say what it moved. */
async function weighNow(): Promise<void> {
  const now = builds.get()
  if (!isOwn(now)) return
  const sheet = sheetOf(now)
  const [{ weighed }, { remember }] = await Promise.all([look(sheet), import('../../state/weighed.ts')])
  remember(sheet, weighed)
}

function OwnEntry({ field, fields }: { field: Field; fields: ReadonlyMap<string, Field> }) {
  const now = useStore(builds)
  const shown = useStore(system)
  // A field begins anew with another build or other units: what was typed belongs to what it was typed for.
  return <Entry key={`${now.chosen}${shown}`} field={field} fields={fields} sheet={sheetOf(now)} system={shown} uid="f" />
}
function Known({ fields }: { fields: readonly Field[] }) {
  return <Progress sheet={sheetOf(useStore(builds))} fields={fields} />
}
