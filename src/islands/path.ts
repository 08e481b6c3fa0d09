import { fromOtherTabs, load, save, type Key } from '../state/kept.ts'

/** Steps of the reading path that were ticked, by name. */
const key: Key<readonly string[]> = {
  name: 'first-build', version: 1, bound: 500,
  read: (data) => (Array.isArray(data) && data.length <= 20 && data.every((id) => typeof id === 'string' && /^[a-z]{1,20}$/.test(id)) ? data : null),
}

/** Keeps the ticks of the path on this device, and says how far the reader has come. */
export function wakePath(list: HTMLElement, progress: HTMLElement): void {
  const boxes = [...list.querySelectorAll<HTMLInputElement>('input[data-step]')]
  const say = (kept: boolean): void => {
    const next = boxes.find((box) => !box.checked)
    const done = boxes.filter((box) => box.checked).length
    const words = next ? `${done} of ${boxes.length} done. Next: ${list.querySelector(`#${next.dataset.step!} h2`)!.textContent}.` : `All ${boxes.length} done.`
    progress.textContent = `${words} ${kept ? 'Ticks are kept on this device alone.' : 'This browser does not let ticks be kept: they last until the page is closed.'}`
  }
  const read = (): void => {
    const kept = load(key)
    for (const box of boxes) box.checked = kept.found === 'value' && kept.value.includes(box.dataset.step!)
    say(kept.found !== 'blocked')
  }
  list.addEventListener('change', () => say(save(key, boxes.filter((box) => box.checked).map((box) => box.dataset.step!)) === 'saved'))
  fromOtherTabs((name) => { if (name === key.name) read() })
  read()
}
