import type { Sheet } from '@trochoid/compute/build/sheet.ts'

/** A build as a file: its name, its type, its text. */
export const buildFile = (sheet: Sheet): readonly [name: string, type: string, text: string] => [
  `${sheet.name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'build'}.json`, 'application/json', JSON.stringify(sheet, null, 2),
]
