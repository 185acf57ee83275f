// The tick: a stage that is done, a box that is true. Never a verdict.
export function TickMark() {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <path d="M2 8.5l4 4L14 3.5" fill="none" stroke="currentColor" strokeWidth="2.25" />
    </svg>
  );
}
