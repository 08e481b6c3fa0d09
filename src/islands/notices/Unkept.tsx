import { useState } from 'preact/hooks'
import { sheetOf } from '../../state/build.ts'
import { allSetAside, throwAway } from '../../state/aside.ts'
import type { Saved } from '../../state/kept.ts'
import { builds, isOwn } from '../../state/own.ts'
import { saveFile } from '../parts/files.ts'
import { buildFile } from '../sheet/buildFile.ts'

type State = Exclude<Saved, 'saved'> | 'damaged'
const words: Readonly<Record<State, string>> = {
  'full': 'Not saved: the browser has no room left. You can go on; save the build as a file before you leave.',
  'blocked': 'Not saved: this browser keeps nothing for this site. You can go on; what you change is lost when the page closes, so save it as a file.',
  'too large': 'Not saved: this build is larger than can be kept here. You can go on; save it as a file.',
  'damaged': 'Something that this browser had kept could not be read. It was set aside as it was; everything else is whole.',
}

/** What was not kept, or could not be read, and what to do about it. */
export function Unkept({ state }: { state: State }) {
  const [aside, setAside] = useState(allSetAside)
  const sheet = sheetOf(builds.get())
  return (
    <div class="fault no-print" role="status">
      <p>{words[state]} {state !== 'damaged' && isOwn(builds.get()) && <button type="button" onClick={() => saveFile(...buildFile(sheetOf(builds.get())))}>Save {sheet.name} as a file</button>}</p>
      {state === 'damaged' && aside.length > 0 && (
        <ul class="small">
          {aside.map(({ address, text }) => (
            <li key={address}>
              {nameIn(text)} <span class="soft">({address}, {text.length} characters)</span>{' '}
              <button type="button" class="plain" onClick={() => saveFile(`${address}.json`, 'application/json', text)}>Save what was set aside</button>{' '}
              <button type="button" class="plain" onClick={() => { throwAway(address); setAside(allSetAside()) }}>Throw it away</button>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

/** The name of a build, as far as damaged text still tells it. */
const nameIn = (text: string): string => {
  const name = /"name":"([^"\\]{1,120})"/.exec(text)?.[1]
  return name === undefined ? 'Something without a name' : `“${name}”`
}
