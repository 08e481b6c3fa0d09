export const files = import.meta.glob('/shared/cooling/*.calc.ts')
