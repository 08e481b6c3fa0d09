import { builds, choose, demoSheets } from '../../state/build.ts'
import { Choose } from '../parts/Choose.tsx'
import { useStore } from '../parts/useStore.ts'

/** Which build the page shows. */
export function WhichBuild({ sheetPage }: { sheetPage?: string }) {
  const now = useStore(builds)
  const options = [...Object.entries(now.own).map(([id, sheet]) => [id, sheet.name] as const), ...Object.entries(demoSheets).map(([id, sheet]) => [`demo:${id}`, sheet.name] as const)]
  return (
    <div class="which no-print">
      <Choose id="which" label="Build" value={now.chosen} options={options} onChoose={choose} />
      {sheetPage && <p class="small"><a href={sheetPage}>Its build sheet</a></p>}
    </div>
  )
}
