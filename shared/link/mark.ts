/** Three bytes that stand for a name in a link (FNV-1a, folded): the name may move in its list, and a link that was sent out still finds it. */
export function mark(name: string): number {
  let hash = 0x811c9dc5
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193)
  return ((hash >>> 24) ^ hash) & 0xffffff
}
