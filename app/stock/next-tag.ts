// Tags of single plates count up by themselves while a box is measured.

/** The tag after this one: "A09" is followed by "A10", "A99" by "A100", and a tag without a figure, "A", by "A1". */
export function nextTag(tag: string): string {
  const [, prefix = tag, figures = '0'] = /^(.*?)(\d+)$/.exec(tag) ?? [];
  return prefix + String(BigInt(figures) + 1n).padStart(figures.length, '0');
}
