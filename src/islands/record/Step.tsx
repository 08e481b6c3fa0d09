import type { Written } from '@trochoid/compute/record/record.ts'

/** A step to tick, with who ticked it and when. */
export const Step = ({ name, line, onWrite }: { name: string; line: Written | undefined; onWrite: (change: Written) => void }) => (
  <><label><input type="checkbox" checked={line?.done ?? false} onChange={(e) => onWrite({ done: e.currentTarget.checked })} /> {name}</label>{line?.done && <span class="small soft"> {[line.by, line.on].filter(Boolean).join(', ')}</span>}</>
)
