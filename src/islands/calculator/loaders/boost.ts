export const files = import.meta.glob('/shared/boost/*.calc.ts')
