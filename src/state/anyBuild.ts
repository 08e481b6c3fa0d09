import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { sentChosen, type Builds } from './own.ts'

/** A build that may be chosen: the reader's own, an invented one, or one that was only brought to this page. */
export type Choice = readonly [id: string, sheet: Sheet]

/** Every build there is to choose from: one that was sent, the reader's own, the invented ones, those brought to the page. */
export const anyBuilds = ({ own, sent }: Builds, demos: Readonly<Record<string, Sheet>>, brought: readonly Choice[] = []): readonly Choice[] =>
  [...(sent ? [[sentChosen, sent] as const] : []), ...Object.entries(own), ...Object.entries(demos).map(([name, sheet]): Choice => [`demo:${name}`, sheet]), ...brought]

export type Opened = { readonly ok: true; readonly sheet: Sheet } | { readonly ok: false; readonly says: string }
