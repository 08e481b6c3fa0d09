/** Copies a table as it is shown, its cells apart by tabs: a spreadsheet takes it as a table. */
export function copyTables(): void {
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-copies-table]')) {
    const row = button.parentElement!
    const table = row.previousElementSibling?.querySelector('table')
    if (!table) continue
    button.hidden = false
    button.addEventListener('click', () => {
      const text = [...table.rows].map((line) => [...line.cells].map((cell) => cell.textContent.trim()).join('\t')).join('\n')
      const status = row.querySelector('[role=status]')!
      navigator.clipboard.writeText(text).then(() => { status.textContent = 'Copied.' }, () => { status.textContent = 'The browser did not allow copying.' })
    })
  }
}
