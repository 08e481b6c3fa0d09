import { hydrate, render } from 'preact'
import { builds, demoChosen } from '../state/own.ts'
import { sheetOf } from '../state/build.ts'
import { allFields, look } from '../state/solver/look.ts'
import { otherTurbo } from './other.ts'
import { withTurbo } from './turbo.ts'
import { TwoTurbos } from './TwoTurbos.tsx'

/** Makes the page of two turbochargers live, on the reader's own build where there is one. */
export async function wakeTwo(root: HTMLElement): Promise<void> {
  const fields = await allFields()
  const sheet = sheetOf(builds.get())
  const other = withTurbo(sheet, otherTurbo(sheet))
  const [one, two] = await Promise.all([look(sheet), look(other)])
  const page = <TwoTurbos first={{ sheet, ...one }} second={{ sheet: other, ...two }} fields={fields} />
  if (builds.get().chosen === demoChosen) return hydrate(page, root)
  root.replaceChildren()
  render(page, root)
}
