import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild, sweepSpeeds } from '@trochoid/compute/build/solve.ts'
import { builds, sheetOf } from './build.ts'
import { store, type Store } from './store.ts'
import { thresholds } from './thresholds.ts'

/** The build that is shown, solved and weighed. `fine` when over all 36 speeds, which follows a pause in typing. */
export type View = { readonly sheet: Sheet; readonly solved: Solved; readonly weighed: readonly Weighed[]; readonly fine: boolean }

const coarse = 12
const pause = 250

export function lookAt(sheet: Sheet, fine = true): View {
  const limit = sheet.entries['engine.speedLimit']?.value
  const solved = fine || typeof limit !== 'number' ? solveBuild(sheet) : solveBuild(sheet, sweepSpeeds(limit, coarse))
  return { sheet, solved, weighed: weighMargins(margins, solved, sheet, thresholds.get()), fine }
}

/** Follows the build as it is edited: twelve speeds at once, all of them after a pause. */
export function follow(): Store<View> {
  const view = store(lookAt(sheetOf(builds.get())))
  let timer: ReturnType<typeof setTimeout> | undefined
  builds.watch(() => {
    const sheet = sheetOf(builds.get())
    if (sheet === view.get().sheet) return
    view.set(lookAt(sheet, false))
    clearTimeout(timer)
    timer = setTimeout(() => view.set(lookAt(sheet)), pause)
  })
  thresholds.watch(() => view.set({ ...view.get(), weighed: weighMargins(margins, view.get().solved, view.get().sheet, thresholds.get()) }))
  return view
}
