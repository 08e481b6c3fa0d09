import { choose } from '../../state/edit.ts'
import { builds, sentChosen } from '../../state/own.ts'
import { demoSheets } from '../../state/solver/look.ts'
import { Choose } from '../parts/Choose.tsx'
import { useStore } from '../parts/useStore.ts'

/** Which build the page shows. */
export function WhichBuild({ sheetPage }: { sheetPage?: string }) {
  const now = useStore(builds)
  const demos = useStore(demoSheets)
  const options = [...(now.sent ? [[sentChosen, `${now.sent.name}, not kept`] as const] : []), ...Object.entries(now.own).map(([id, sheet]) => [id, sheet.name] as const), ...Object.entries(demos).map(([id, sheet]) => [`demo:${id}`, sheet.name] as const)]
  return (
    <>
      <p class="on-paper"><strong>{options.find(([id]) => id === now.chosen)?.[1]}</strong></p>
      <div class="which no-print">
        <Choose id="which" label="Build" value={now.chosen} options={options} onChoose={choose} />
        {sheetPage && <p class="small"><a href={sheetPage}>Its build sheet</a></p>}
      </div>
    </>
  )
}
