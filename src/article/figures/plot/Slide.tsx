/** A number that is drawn along or moved with the arrow keys; what it stands at is said in the reader's units. */
export function Slide({ name, low, high, step, at, says, onMove }: {
  name: string; low: number; high: number; step: number; at: number; says: string; onMove: (value: number) => void
}) {
  return (
    <label class="small no-print slide">
      {name} <strong>{says}</strong>
      <input type="range" min={low} max={high} step={step} value={at} aria-valuetext={says} onInput={(e) => onMove(Number(e.currentTarget.value))} />
    </label>
  )
}
