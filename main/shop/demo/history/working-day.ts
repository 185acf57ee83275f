// What happens on one day of the history, step by step: afternoons in UTC, which is the same day nearly everywhere.

/** Each call answers an instant four minutes after the one before, the first at `from` o'clock. */
export function stepsOn(day: string, from = 14): () => string {
  let minutes = from * 60;
  return () => {
    const at = `${day}T${twoDigits(minutes / 60)}:${twoDigits(minutes % 60)}:00.000Z`;
    minutes += 4;
    return at;
  };
}

function twoDigits(value: number): string {
  return String(Math.floor(value)).padStart(2, '0');
}
