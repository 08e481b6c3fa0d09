import { inventedMaps } from '@trochoid/compute/data/maps/index.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { turboLike, turboOf, type Turbo } from './turbo.ts'

/** What stands beside a build's own turbocharger to begin with: the large invented one, or the medium one beside that. */
export function otherTurbo(sheet: Sheet): Turbo {
  const own = turboOf(sheet)
  return turboLike(own, own.map.name === inventedMaps.large.name ? inventedMaps.medium : inventedMaps.large)
}
