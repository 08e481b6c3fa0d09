import type { Kind } from '@trochoid/compute/quantity/kinds.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { write, type System } from '@trochoid/compute/quantity/write.ts'

/** Writes every number in prose in the reader's units, from the SI value it carries. */
export function writeAll(system: System): void {
  for (const place of document.querySelectorAll<HTMLDataElement>('data[data-live]')) {
    const { kind, units, figures } = place.dataset
    const si = Number(place.value)
    if (!kind || !units || place.value === '' || !Number.isFinite(si)) continue
    place.textContent = write(si, { kind: kind as Kind, name: '' } as Quantity, units.split('|')[system === 'metric' ? 0 : 1]!, figures ? Number(figures) : 3)
  }
}
