import type { Field } from '@trochoid/compute/build/field.ts'
import { emptySheet } from '@trochoid/compute/build/sheet.ts'
import { change, sheetOf } from '../../state/build.ts'
import { choose, open, redo, redoable, remove, undo, undoable } from '../../state/edit.ts'
import { openFile } from '../../state/openFile.ts'
import { builds, saved, whose } from '../../state/own.ts'
import { allFields } from '../../state/solver/look.ts'
import { Unkept } from '../notices/Unkept.tsx'
import { saveFile } from '../parts/files.ts'
import { useStore } from '../parts/useStore.ts'
import { ElsewhereChanged } from './ElsewhereChanged.tsx'
import { Progress } from './Progress.tsx'
import { SendLink } from './SendLink.tsx'
import { buildFile } from './buildFile.ts'
import { told } from './told.ts'
import { WhichBuild } from './WhichBuild.tsx'

const about = {
  own: 'Kept in this browser as you type, and sent nowhere.',
  sent: 'A build that was sent to you: changing it makes a copy of your own beside your builds.',
  demo: 'An invented build: changing it makes a copy of your own. What you type stays in this browser and is sent nowhere.',
}

/** Above the sheet: which build, its name and note, files, what is known of it. */
export function Desk({ margins, fields }: { margins: string; fields: ReadonlyMap<string, Field> }) {
  const now = useStore(builds)
  const state = useStore(saved)
  const back = useStore(undoable)
  const forth = useStore(redoable)
  const said = useStore(told)
  const tell = told.set
  const sheet = sheetOf(now)
  const of = whose(now)
  const own = of === 'own'
  const bring = async (file: File | undefined) => {
    if (!file) return
    tell('Reading the file…')
    const read = await openFile(file, await allFields())
    if (!read.ok) return tell(read.says)
    open(read.sheet)
    tell(`${read.sheet.name} was opened beside what was there.`)
  }
  return (
    <>
      <WhichBuild />
      <p class="small">{about[of]} <a href={margins}>Its margins</a></p>
      {state && state !== 'saved' && <Unkept state={state} />}
      <ElsewhereChanged fields={fields} />
      <div class="row no-print">
        <button type="button" onClick={() => { open(emptySheet()); tell('A new build was begun: every number in it is common practice until you say otherwise.') }}>Begin a build of my own</button>
        <button type="button" onClick={() => { open({ ...sheet, name: `Copy of ${sheet.name}` }); tell(`${sheet.name} was copied; the copy is shown.`) }}>Copy this one</button>
        <button type="button" onClick={() => saveFile(...buildFile(sheet))}>Save as a file</button>
        <label class="button">Open a file<input type="file" class="hidden-input" accept=".json,application/json" onChange={(e) => { const input = e.currentTarget; void bring(input.files?.[0]).then(() => { input.value = '' }) }} /></label>
        <button type="button" disabled={!back} aria-keyshortcuts="Control+Z" onClick={() => { undo(); tell('Taken back.') }}>Undo</button>
        <button type="button" disabled={!forth} aria-keyshortcuts="Control+Shift+Z" onClick={() => { redo(); tell('Done again.') }}>Redo</button>
        {own && <button type="button" onClick={() => { remove(now.chosen); tell(`${sheet.name} was removed from this browser. Undo brings it back.`) }}>Remove</button>}
        <button type="button" onClick={() => print()}>Print</button>
      </div>
      <p role="status" class="small">{said}</p>
      <SendLink sheet={sheet} />
      {own && (
        <div class="two">
          <div class="field"><label for="name">Name of the build</label><input id="name" type="text" maxLength={120} value={sheet.name} onChange={(e) => change((s) => ({ ...s, name: e.currentTarget.value.trim() || 'My build' }))} /></div>
          <div class="field"><label for="note">Note</label><input id="note" type="text" maxLength={4000} value={sheet.note} onChange={(e) => change((s) => ({ ...s, note: e.currentTarget.value }))} /></div>
        </div>
      )}
      <Progress sheet={sheet} fields={[...fields.values()]} />
      {!own && Object.keys(now.own).length > 0 && <p class="small"><button type="button" class="plain" onClick={() => choose(Object.keys(now.own).at(-1)!)}>Back to my build</button></p>}
    </>
  )
}
