/** How much of the work beside the page is done, and how it is stopped; nothing while none runs. */
export const Working = ({ part, says, onStop }: { part: number | null; says: string; onStop: () => void }) =>
  (part === null ? null : <><progress value={part} aria-label={says} /><button type="button" class="plain" onClick={onStop}>Stop</button></>)
