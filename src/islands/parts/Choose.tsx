/** One of a few, in words. */
export function Choose({ id, label, value, options, onChoose }: { id: string; label: string; value: string; options: readonly (readonly [string, string])[]; onChoose: (value: string) => void }) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(e) => onChoose(e.currentTarget.value)}>
        {options.map(([key, words]) => <option key={key} value={key} selected={key === value}>{words}</option>)}
      </select>
    </div>
  )
}
