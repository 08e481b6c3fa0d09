import { emptySheet, type Sheet } from '../../build/sheet.ts'

export const builds: { readonly street: Sheet } = { street: emptySheet('Street') }
