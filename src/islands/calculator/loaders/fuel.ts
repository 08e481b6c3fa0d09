export const files = import.meta.glob('/shared/fuel/*.calc.ts')
