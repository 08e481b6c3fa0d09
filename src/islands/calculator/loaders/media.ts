export const files = import.meta.glob('/shared/media/*.calc.ts')
