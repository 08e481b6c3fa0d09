import type { Chance } from '@trochoid/compute/uncertainty/chances.ts'

/** To four figures, as a page carries its first table; ends that are no number travel as words. */
export const packed = (chance: Chance): Chance =>
  JSON.parse(JSON.stringify(chance, (_, value: unknown) => (typeof value !== 'number' ? value : Number.isFinite(value) ? Number(value.toPrecision(4)) : String(value)))) as Chance

/** What a page carries, as it was. */
export const unpacked = (chance: Chance): Chance => ({ ...chance, mean: Number(chance.mean), interval: [Number(chance.interval[0]), Number(chance.interval[1])] })
