export const files = import.meta.glob('/shared/spark/*.calc.ts')
