export const files = import.meta.glob('/shared/engine/*.calc.ts')
