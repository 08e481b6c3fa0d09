import { type Sources } from '../data/source.ts'

export const sources = {
  'sae-j1832': { author: 'SAE International', title: 'J1832: Low Pressure Gasoline Fuel Injector', year: '2001', seen: 'from memory' },
} as const satisfies Sources
