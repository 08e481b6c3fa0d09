/** Hands the reader a file. */
export function saveFile(name: string, type: string, text: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

/** Rows as CSV: quoted where they must be, never taken for a formula by a spreadsheet. */
export const csv = (rows: readonly (readonly string[])[]): string => rows.map((row) => row.map(cell).join(',')).join('\r\n')
function cell(text: string): string {
  const safe = /^[=+@\t]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
