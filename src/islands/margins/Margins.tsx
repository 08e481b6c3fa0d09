import type { Weighed } from '@trochoid/compute/build/margins.ts'
import { useRef, useState } from 'preact/hooks'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import { namer, type View } from '../../state/view.ts'
import { Choose } from '../parts/Choose.tsx'
import { useHeldFocus } from '../parts/useHeldFocus.ts'
import { useStore } from '../parts/useStore.ts'
import { Line } from './Line.tsx'
import { More } from './More.tsx'
import { Tools } from './Tools.tsx'
import { legend } from './words.ts'

/** Titles and addresses that the page was built with, so that they need not be shipped with the code. */
export type Told = {
  /** The page that explains one margin in plain words. */
  readonly plainly: string
  readonly themes: Readonly<Record<string, string>>
  /** By margin. */
  readonly articles: Readonly<Record<string, readonly [address: string, title: string]>>
}

/** The whole build, worst first, knock before all. */
export function Margins({ view, told }: { view: Store<View>; told: Told }) {
  const now = useStore(view)
  const system = useStore(systemStore)
  const nameOf = namer(now.fields)
  const [theme, setTheme] = useState('')
  const themes = [...new Set(now.weighed.map((w) => w.margin.theme))]
  const list = useRef<HTMLOListElement>(null)
  useHeldFocus(list)
  const shown = now.weighed.filter((w) => theme === '' || w.margin.theme === theme || w.margin.always)
  return (
    <>
      <p role="status" class="answer">{verdict(now.weighed)}</p>
      <p class="small soft">{legend}</p>
      <div class="row no-print">
        <Choose id="theme" label="Show" value={theme} options={[['', 'every discipline'], ...themes.map((t) => [t, told.themes[t] ?? t] as const)]} onChoose={setTheme} />
        <Tools weighed={shown} system={system} nameOf={nameOf} />
      </div>
      <ol ref={list} class="margins">
        {shown.map((w) => (
          <li key={w.id} id={`m-${w.id}`} class="margin" data-state={w.state}>
            <Line of={w} system={system} nameOf={nameOf} />
            <More of={w} view={view} told={told} />
          </li>
        ))}
      </ol>
    </>
  )
}

/** How many of each, in one sentence. Nothing reads as if all held: knock is always told. */
export function verdict(weighed: readonly Weighed[]): string {
  const count = (state: string) => weighed.filter((w) => w.state === state && !w.margin.always).length
  const parts = [[count('short'), 'short'], [count('tight'), 'tight'], [count('not known'), 'not known'], [count('holds'), 'hold']] as const
  const said = parts.filter(([n]) => n > 0).map(([n, word]) => `${n} ${word !== 'hold' ? `${n === 1 ? 'is' : 'are'} ${word}` : n === 1 ? 'holds' : 'hold'}`)
  return `Of ${weighed.filter((w) => !w.margin.always).length} links, ${said.slice(0, -1).join(', ')}${said.length > 1 ? ' and ' : ''}${said.at(-1) ?? ''} in this model. Knock is not known: no number here can tell it.`
}
