// Timing of one call, medians, and the lines a section prints.
import { cpus } from 'node:os';

export function timed<T>(run: () => T): { readonly milliseconds: number; readonly value: T } {
  const start = process.hrtime.bigint();
  const value = run();
  return { milliseconds: Number(process.hrtime.bigint() - start) / 1e6, value };
}

/** The middle value; of an even number the lower of the two in the middle, so that it is one that was measured. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** The smallest measured value that at least this share of them do not exceed. */
export function quantile(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(share * values.length) - 1)]!;
}

export function milliseconds(value: number): string {
  return value < 10 ? value.toFixed(2) : value.toFixed(0);
}

export function machine(): string {
  const processors = cpus();
  return `Node ${process.version}, ${processors.length} × ${processors[0]?.model.trim() ?? 'unknown processor'}`;
}

/** Prints a table with its columns lined up. */
export function printTable(heading: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = heading.map((_, column) => Math.max(...[heading, ...rows].map((row) => row[column]!.length)));
  for (const row of [heading, ...rows]) {
    console.log(
      `  ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]!))).join('  ')}`,
    );
  }
}
