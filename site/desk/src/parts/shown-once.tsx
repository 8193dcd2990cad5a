/** A secret that is on the screen this once. */
export function ShownOnce({ secret, words }: { secret: string; words: string }) {
  return (
    <div role="status">
      <p>{words} It is shown this once.</p>
      <p class="acts">
        <code data-address>{secret}</code>
        <button type="button" onClick={() => void navigator.clipboard.writeText(secret)}>
          Copy
        </button>
      </p>
    </div>
  );
}
