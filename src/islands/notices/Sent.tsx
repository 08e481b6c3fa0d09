import { differing } from '@trochoid/compute/build/differing.ts'
import { edition } from '@trochoid/compute/build/corrections.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { sheetOf } from '../../state/build.ts'
import { choose, open } from '../../state/edit.ts'
import { builds, sentChosen } from '../../state/own.ts'
import { leave, sent, type Sent } from '../../state/sent.ts'
import { system as systemStore } from '../../state/system.ts'
import { written } from '../parts/say.ts'
import { useStore } from '../parts/useStore.ts'
import { short } from '../working/value.ts'
import { bringUpToDate } from './bringUpToDate.ts'

type Open = Extract<Sent, { state: 'open' }>

/** Above every page while its address brings a build: whose it is, what differs, and the two ways on. */
export function SentBanner({ fields }: { fields: ReadonlyMap<string, Field> }) {
  const of = useStore(sent)
  if (of === null) return null
  return of.state === 'open' ? <Opened of={of} fields={fields} /> : <Refused says={of.says} newer={of.newer} />
}

function Opened({ of, fields }: { of: Open; fields: ReadonlyMap<string, Field> }) {
  const now = useStore(builds)
  const system = useStore(systemStore)
  const shown = now.chosen === sentChosen
  const mine = sheetOf({ ...now, chosen: of.before })
  const own = Object.hasOwn(now.own, of.before)
  const count = Object.keys(now.own).length
  return (
    <>
      <p role="status">
        <strong>{shown ? 'You are looking at a build that was sent to you.' : 'This address also brings a build that was sent to you.'}</strong>{' '}
        {count === 0 ? 'You have no build of your own here.' : count === 1 ? 'Your own build is untouched.' : `Your ${count} builds are untouched.`} Nothing of it is kept unless you say so.
      </p>
      {of.note !== '' && <p>The sender writes: <q data-note>{of.note}</q> <span class="small soft">(the sender’s words, not the handbook’s)</span></p>}
      <Differs from={mine} to={of.sheet} whose={own ? `your build “${mine.name}”` : 'the invented demo build'} fields={fields} system={system} />
      {of.edition > edition && <Newer says="It was made with a newer handbook: some answers may come out differently there." />}
      <p class="row no-print">
        <button type="button" onClick={() => { open(of.sheet); leave(builds.get().chosen) }}>Keep it as a build of mine</button>
        {shown ? <button type="button" onClick={() => leave()}>Close it{own ? ' and go back to mine' : ''}</button> : <button type="button" onClick={() => choose(sentChosen)}>Show it</button>}
      </p>
    </>
  )
}

const first = 4
/** What differs, in words; all of it in a fold. */
function Differs({ from, to, whose, fields, system }: { from: Sheet; to: Sheet; whose: string; fields: ReadonlyMap<string, Field>; system: System }) {
  const all = differing(from, to, fields)
  if (all.length === 0) return <p>Its numbers are those of {whose}.</p>
  const say = ({ field, here, there }: (typeof all)[number]): string => {
    const name = (field.label ?? field.shape.name).replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase())
    return field.shape.kind === 'curve' || field.shape.kind === 'map' ? `another ${name}` : `${name} ${short(written(there, field.shape, system, 4))} against ${short(written(here, field.shape, system, 4))}`
  }
  const rest = all.length - first
  return (
    <>
      <p>It differs from {whose} in {all.length === 1 ? 'one number' : `${all.length} numbers`}: {all.slice(0, first).map(say).join('; ')}{rest > 0 ? `; and ${rest} more.` : '.'}</p>
      {rest > 0 && <details><summary class="small">All {all.length}</summary><ul class="small">{all.map((d) => <li key={d.field.path}>{say(d)}</li>)}</ul></details>}
    </>
  )
}

function Refused({ says, newer }: { says: string; newer: boolean }) {
  return (
    <>
      <p role="status"><strong>The link could not be opened.</strong> {says} Nothing of yours was touched.</p>
      {newer ? <Newer says="Bring the handbook up to date, and the link opens." /> : null}
      <p class="no-print"><button type="button" onClick={() => leave(builds.get().chosen)}>Close this</button></p>
    </>
  )
}

/** Offers the update to a copy that was kept for reading offline. The address stays: the page opens it again once it is newer. */
function Newer({ says }: { says: string }) {
  const [told, tell] = useState('')
  return <p>{says} <button type="button" class="no-print" onClick={() => { tell('Looking for a newer version…'); void bringUpToDate().then(tell) }}>Update the handbook</button> <span role="status">{told}</span></p>
}
