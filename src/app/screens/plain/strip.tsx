export function Strip(p: { word: string; title: string; line: string; stopText: string; onStop(): void }) {
  return (
    <div className="strip" data-word={p.word}>
      <strong>{p.title}</strong> {p.line}{' '}
      <button type="button" onClick={p.onStop}>
        {p.stopText}
      </button>
    </div>
  );
}
