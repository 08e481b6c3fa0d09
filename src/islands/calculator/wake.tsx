import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { hydrate, render, type ComponentType } from 'preact'
import { builds, followed, whose } from '../../state/own.ts'
import { system } from '../../state/system.ts'
import type { Form } from '../working/copy.ts'
import { Card } from './Card.tsx'
import { loadCalculation } from './load.ts'
import { model, start, type Model } from './model.ts'

type Fold = ComponentType<{ model: Model; uid: string; page: string }>
const folds: Readonly<Record<string, () => Promise<Fold>>> = {
  moves: () => import('./MovesFold.tsx').then((m) => m.MovesFold),
  backwards: () => import('./BackwardsFold.tsx').then((m) => m.BackwardsFold),
  curve: () => import('./CurveFold.tsx').then((m) => m.CurveFold),
  link: () => import('./LinkFold.tsx').then((m) => m.LinkFold),
}

/** Makes one calculator of the page live. The page was built with the demo build's numbers; a reader's own build follows. */
export async function wake(card: HTMLElement): Promise<void> {
  const { file, uid, page } = card.dataset as { file: string; uid: string; page: string }
  const of = await loadCalculation(file)
  const live = model(start(of, baseOf(of, card.dataset.values!), 'metric'))
  const begun = typedAlready(card, uid)
  hydrate(<Card model={live} uid={uid} />, card.querySelector('[data-part=card]')!)
  for (const [name, text] of begun) live.type(name, text)
  for (const fold of card.querySelectorAll<HTMLDetailsElement>('details[data-fold]')) wakeFold(fold, live, uid, page)
  wakeWorking(card, live)
  live.show(system.get())
  system.watch(() => live.show(system.get()))
  if (followed.get()) await followBuild(live)
  else followLater(live)
  if (card.dataset.alone !== undefined) {
    if (location.hash.includes('=')) await follow(card, live)
    addEventListener('hashchange', () => void follow(card, live))
  }
}

/** From here on the numbers beneath the reader's are those of the build that is shown. */
async function followBuild(live: Model): Promise<void> {
  const { ownValues } = await import('../../state/ownValues.ts')
  const rebase = async () => live.rebase(await ownValues(live.state.get().of), whose(builds.get()))
  await rebase()
  builds.watch(() => void rebase())
}

/** The reader may begin a build on this very page: putting in one number makes it. */
function followLater(live: Model): void {
  const stop = followed.watch(() => { stop(); void followBuild(live) })
}

/** What was typed before the calculator came alive: it is read, not overwritten. */
function typedAlready(card: HTMLElement, uid: string): (readonly [string, string])[] {
  return [...card.querySelectorAll<HTMLInputElement>('[data-part=card] input')].filter((input) => input.value !== input.defaultValue).map((input) => [input.id.slice(uid.length + 1), input.value])
}

/** Values the page was built with; those left out are the fields' own start values. */
const baseOf = (of: AnyCalculation, json: string): Values => {
  const told = JSON.parse(json) as Values
  return Object.fromEntries(Object.entries(of.in).map(([name, input]) => [name, name in told ? told[name] : input.origin === 'field' ? input.start : null]))
}

function wakeFold(fold: HTMLDetailsElement, live: Model, uid: string, page: string): void {
  const open = async () => {
    if (!fold.open) return
    fold.removeEventListener('toggle', open)
    const Part = await folds[fold.dataset.fold!]!()
    const place = fold.querySelector('[data-part]')!
    // Drawn anew rather than hydrated: by now the numbers may no longer be those the page was built with.
    place.replaceChildren()
    render(<Part model={live} uid={uid} page={page} />, place)
  }
  fold.addEventListener('toggle', open)
  if (fold.open) void open()
}

function wakeWorking(card: HTMLElement, live: Model): void {
  const fold = card.querySelector<HTMLDetailsElement>('details[data-working-fold]')
  const root = fold?.querySelector('[data-working]')
  if (!fold || !root) return
  const fill = async () => {
    if (!fold.open) return
    const { fillWorking } = await import('../working/fill.ts')
    const now = live.state.get()
    if (now.result) fillWorking(root, now.result.trace, now.system)
  }
  fold.addEventListener('toggle', () => void fill())
  live.state.watch(() => void fill())
  const copies = root.querySelector<HTMLElement>('[data-copies]')!
  copies.hidden = false
  copies.addEventListener('click', (event) => {
    const form = (event.target as HTMLElement).dataset.copy as Form | undefined
    if (!form) return
    const status = copies.querySelector('[role=status]')!
    void import('../working/copy.ts')
      .then(({ copyOf }) => navigator.clipboard.writeText(copyOf(root, form)))
      .then(() => { status.textContent = 'Copied.' }, () => { status.textContent = 'The browser did not allow copying.' })
  })
}

async function follow(card: HTMLElement, live: Model): Promise<void> {
  const { readLink } = await import('./readLink.ts')
  const linked = await readLink(live.state.get().of, location.hash)
  if (!linked) return
  live.put(linked.values)
  live.settle()
  const { tellOf } = await import('./tellOf.ts')
  tellOf(linked, card.querySelector<HTMLElement>('[data-linked]')!)
}
