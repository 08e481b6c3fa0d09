import { render } from 'preact'
import { follow } from '../../state/view.ts'
import { WhichBuild } from '../sheet/WhichBuild.tsx'
import type { Told } from '../sweep/values.ts'
import { Report } from './Report.tsx'
import type { Makers } from './workings.ts'

/** Makes the report that of the reader's build: drawn anew, since it is not as the page was built. */
export async function wakeReport(root: HTMLElement): Promise<void> {
  const view = await follow()
  const { values, makers } = JSON.parse(root.dataset.told!) as { values: readonly Told[]; makers: Makers }
  const part = (name: string): HTMLElement => root.querySelector(`[data-part=${name}]`)!
  for (const name of ['which', 'report']) part(name).replaceChildren()
  render(<WhichBuild sheetPage={root.dataset.sheetPage!} />, part('which'))
  render(<Report view={view} values={values} makers={makers} opens={root.dataset.sheetPage!} />, part('report'))
}
