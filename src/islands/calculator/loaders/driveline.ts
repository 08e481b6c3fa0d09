export const files = import.meta.glob('/shared/driveline/*.calc.ts')
