// The short cautions that papers carry.

/** For whoever works at the bench from a shop's copy. */
export const benchCautions: readonly string[] = [
  'Hand off before air: 40 psi on 12 square inches closes with about 500 pounds. Air a touch first, then full; never unless ring and all plates are in and the ring is seen seated.',
  'No face or hand above the pack, the ring aimed away, never air on skin. Eye and hearing protection, a rag over the other ports.',
  'Cleaning with air: below 30 psi and only with chip guarding and protective equipment (29 CFR 1910.242(b), USA; it governs cleaning, not this check). Never blow out friction dust, it may hold asbestos: wet it.',
  'Spring compressor with long studs or a chain, released slowly. A full converter slides out: hold it.',
  'Lift with a jack adapter; the unit weighs 150–250 lb. Stall tests a few seconds, brakes on, nobody in front; hoses rated for boosted line pressure.',
];

/** What every copy says about the limits it judges by. */
export function limitsCaution(family: string, specRevision: number): string {
  return `Limits are those this shop entered for ${family}, revision ${specRevision}. The maker’s manual, local rules and a qualified person come first.`;
}

/** How to read a report without colour. */
export const legend =
  '± holds the true value 95 times in 100. A filled circle says in; a crossed square, out; a half-filled diamond, too close to call; a dash, not read. Open circle: as found. Arrow: off the scale.';

/** For whoever takes packs apart by a pull list. */
export const pullCaution =
  'Rings and springs come off: spring compressor with long studs or a chain, released slowly; eye protection, nobody’s face above the pack. Hand off before air.';
