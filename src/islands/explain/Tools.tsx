import { Choose } from '../parts/Choose.tsx'

/** Which link is explained, and its page on paper. */
export function Tools({ options, chosen, onChoose }: { options: readonly (readonly [id: string, title: string])[]; chosen: string; onChoose?: (id: string) => void }) {
  return (
    <>
      <Choose id="link" label="Link of the chain" value={chosen} options={options} onChoose={onChoose ?? (() => undefined)} />
      <p class="row"><button type="button" onClick={() => print()}>Print this page</button></p>
    </>
  )
}
