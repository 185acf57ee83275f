// The few field shapes that every room shares.
import { z } from 'zod';

/** A row's number in the shop file. */
export const id = z.int().positive();
/** Whole nanometres. */
export const length_nm = z.int();
/** Nanometres that were computed, so not whole. */
export const computed_nm = z.number();
/** An instant, UTC. */
export const instant = z.iso.datetime();
/** One line a person typed; surrounding blanks do not count. */
export const line = z.string().trim().max(200);
export const requiredLine = z.string().trim().min(1, 'must not be empty').max(200);
/** Several lines. */
export const text = z.string().trim().max(4000);
export const nothing = z.strictObject({});
export const done = z.strictObject({});
