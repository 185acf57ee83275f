// The loose steels and other adjusters at hand: single pieces with a tag, and cans sorted by thickness with a count.
import { z } from 'zod';
import { done, id, length_nm, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { piece } from '../packs/packs.contract.ts';
import { pieceKinds } from '../specs/spec-sheet.ts';

export const can = z.strictObject({
  canId: id,
  kind: z.enum(pieceKinds),
  outline: line,
  height_nm: length_nm,
  count: z.int().nonnegative(),
});

export const stockContract = {
  'stock.listLoose': read(
    'the pieces and cans at hand of one outline, or of all when it is empty',
    z.strictObject({ outline: line }),
    z.strictObject({ outlines: z.array(z.string()), pieces: z.array(piece), cans: z.array(can) }),
  ),
  'stock.addPiece': write(
    'put one measured piece among the loose ones',
    z.strictObject({ kind: z.enum(pieceKinds), outline: requiredLine, tag: line, typed: requiredLine, by: id }),
    z.strictObject({ pieceId: id }),
  ),
  'stock.remeasurePiece': write(
    'a piece was measured again, or written down wrong: its new height counts from now on, the old one stays on record',
    z.strictObject({ pieceId: id, typed: requiredLine, reason: requiredLine, by: id }),
    done,
  ),
  'stock.discardPiece': write(
    'a loose piece is not to be used any more, with a reason',
    z.strictObject({ pieceId: id, reason: requiredLine, by: id }),
    done,
  ),
  'stock.addCan': write(
    'start a can of one thickness with a count',
    z.strictObject({
      kind: z.enum(pieceKinds),
      outline: requiredLine,
      typed: requiredLine,
      count: z.int().positive().max(10_000),
      by: id,
    }),
    z.strictObject({ canId: id }),
  ),
  'stock.countCan': write(
    'a can was counted: correct it, with a reason',
    z.strictObject({ canId: id, count: z.int().nonnegative().max(10_000), reason: requiredLine, by: id }),
    done,
  ),
} as const;

export type Can = z.infer<typeof can>;
