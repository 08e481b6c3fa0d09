export const files = import.meta.glob('/shared/oil/*.calc.ts')
