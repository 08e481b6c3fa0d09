import type { Field } from '@trochoid/compute/build/field.ts'
import { emptySheet, fromAt, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { useState } from 'preact/hooks'
import { change, choose, open, remove, sheetOf, undo, undoable } from '../../state/build.ts'
import { builds, damaged, isOwn, saved } from '../../state/own.ts'
import type { Saved } from '../../state/kept.ts'
import { allFields } from '../../state/solver/look.ts'
import { saveFile } from '../parts/files.ts'
import { useStore } from '../parts/useStore.ts'
import { WhichBuild } from './WhichBuild.tsx'

const words: Readonly<Record<Exclude<Saved, 'saved'> | 'damaged', string>> = {
  'full': 'The browser has no room left: this change is not kept. Save the build as a file.',
  'blocked': 'This browser keeps nothing for this site: the build is lost when the page closes. Save it as a file.',
  'too large': 'The builds together are too large to keep. Save some as files and remove them here.',
  'damaged': 'What this browser had kept could not be read. It was set aside, untouched; you can save it as a file.',
}
const fileName = (name: string): string => `${name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'build'}.json`

/** Above the sheet: which build, its name and note, files, what is known of it. */
export function Desk({ margins, fields }: { margins: string; fields: ReadonlyMap<string, Field> }) {
  const now = useStore(builds)
  const state = useStore(saved)
  const back = useStore(undoable)
  const [told, tell] = useState('')
  const sheet = sheetOf(now)
  const own = isOwn(now)
  const bring = async (file: File | undefined) => {
    if (!file) return
    tell('Reading the file…')
    const { readSheet } = await import('@trochoid/compute/build/schema.ts')
    const read = file.size > 2_000_000 ? { ok: false as const, field: '', says: 'This file is far larger than a build file can be.' } : readSheet(await file.text(), await allFields())
    if (!read.ok) return tell(`${file.name} was not opened; nothing that is here was touched. ${read.field ? `${read.field}: ` : ''}${read.says}`)
    open(read.sheet)
    tell(`${read.sheet.name} was opened beside what was there.`)
  }
  return (
    <>
      <WhichBuild />
      <p class="small">{own ? 'Kept in this browser as you type.' : 'An invented build: changing it makes a copy of your own.'} <a href={margins}>Its margins</a></p>
      {state && state !== 'saved' && <p class="fault" role="alert">{words[state]} {state === 'damaged' && damaged !== null && <button type="button" onClick={() => saveFile('set-aside.json', 'application/json', damaged!)}>Save what was set aside</button>}</p>}
      <div class="row no-print">
        <button type="button" onClick={() => open(emptySheet())}>Begin a build of my own</button>
        <button type="button" onClick={() => open({ ...sheet, name: `Copy of ${sheet.name}` })}>Copy this one</button>
        <button type="button" onClick={() => saveFile(fileName(sheet.name), 'application/json', JSON.stringify(sheet, null, 2))}>Save as a file</button>
        <label class="button">Open a file<input type="file" class="hidden-input" accept=".json,application/json" onChange={(e) => { const input = e.currentTarget; void bring(input.files?.[0]).then(() => { input.value = '' }) }} /></label>
        <button type="button" disabled={!back} onClick={undo}>Undo</button>
        {own && <button type="button" onClick={() => { if (confirm(`Remove “${sheet.name}” from this browser?`)) remove(now.chosen) }}>Remove</button>}
        <button type="button" onClick={() => print()}>Print</button>
      </div>
      <p role="status" class="small">{told}</p>
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

/** How much of the sheet is known, and how well. */
export function Progress({ sheet, fields }: { sheet: Sheet; fields: readonly Field[] }) {
  const all = fields.length
  const count = (test: (f: Field) => boolean) => fields.filter(test).length
  const unknown = count((f) => valueAt(sheet, f) === null)
  const measured = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'measured')
  const maker = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'maker')
  const guess = count((f) => valueAt(sheet, f) !== null && fromAt(sheet, f) === 'guess')
  const x = (n: number) => (n / all) * 300
  return (
    <div class="progress">
      <svg viewBox="0 0 300 8" preserveAspectRatio="none" aria-hidden="true"><rect class="area" width="300" height="8" /><rect class="fill-accent" width={x(measured)} height="8" /><rect class="fill" x={x(measured)} width={x(maker)} height="8" /><rect class="fill-warn" x={x(measured + maker)} width={x(guess)} height="8" /></svg>
      <p class="small">Of {all}: {measured} measured, {maker} from a maker, {guess} guessed, {all - measured - maker - guess - unknown} common practice, {unknown} not known.</p>
    </div>
  )
}
