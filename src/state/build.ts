import { emptySheet, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { edit, open } from './edit.ts'
import { builds, isOwn, sentChosen, type Builds } from './own.ts'
import { demoSheets } from './solver/look.ts'

/** The sheet that is shown. The invented ones come with the solver: before it has answered, an empty one stands for them. */
export const sheetOf = ({ chosen, own, sent }: Builds): Sheet =>
  (chosen === sentChosen ? sent : named(own, chosen)) ?? named(demoSheets.get(), chosen.replace('demo:', '')) ?? demoSheets.get()['street'] ?? nothing
const named = (sheets: Readonly<Record<string, Sheet>>, name: string): Sheet | undefined => (Object.hasOwn(sheets, name) ? sheets[name] : undefined)
const nothing = emptySheet()

/** Changes the build that is shown. One that is not the reader's own, invented or sent, is copied first: it stays as it is. */
export function change(how: (sheet: Sheet) => Sheet): void {
  const now = builds.get()
  if (isOwn(now)) return edit(now.chosen, how)
  const sheet = sheetOf(now)
  open(how({ ...sheet, name: `Copy of ${sheet.name}` }))
}
