// The example unit as it came in: what lay in its packs, and what was measured before anything came apart.
import { type JobAtHand, packNamed, readCheck } from './kx3-job.ts';
import type { OffTheLine } from './kx3-trace.ts';

const heights = {
  Forward: {
    steel: ['77.0', '76.5', '78.0', '77.5'],
    steelTags: ['A31', 'A32', 'A33', 'A34'],
    friction: ['79.5', '80.0', '80.0', '80.5'],
    'backing plate': ['250.0'],
  },
  Direct: {
    steel: ['92.0', '91.0', '92.5', '91.5'],
    steelTags: ['B11', 'B12', 'B13', 'B14'],
    friction: ['84.0', '84.5', '84.0', '84.5'],
    'backing plate': ['310.0'],
  },
  'Low/reverse': {
    steel: ['70.0', '70.5', '69.5', '70.0', '70.0'],
    steelTags: ['', '', '', '', ''],
    friction: ['80.0', '80.0', '80.0', '80.0', '80.0'],
    'backing plate': ['200.0'],
    'wave plate': ['85.0'],
    'snap ring': ['74.0'],
  },
} as const;

const asFoundLines = {
  'Forward clearance': ['4 27', '5 27', '5 28', '4 28'],
  'Direct clearance': ['5 32', '5 33', '6 33', '5 33'],
  'Low/reverse clearance': ['12 60'],
} as const;

/** What was measured before anything came apart, and what then lay in the packs. */
export async function measureAsFound(job: JobAtHand, offTheLine: OffTheLine = {}): Promise<void> {
  for (const [name, lines] of Object.entries(asFoundLines)) {
    const accepted = offTheLine[name];
    if (accepted) await readCheck(job, name, 'as found', [accepted.typed], { heard: accepted.heard });
    else await readCheck(job, name, 'as found', lines);
  }
  await readCheck(job, 'Front end play', 'as found', ['31']);
  await readCheck(job, 'Rear end play', 'as found', ['11']);
  await readCheck(job, 'Converter hub to pump bushing', 'as found', ['5.0']);
  for (const name of ['Forward', 'Direct', 'Low/reverse'] as const) await enterFoundPack(job, name);
}

/** Enters what was found in a pack, plate by plate. */
export async function enterFoundPack({ call, jobId, sheet, by }: JobAtHand, name: keyof typeof heights): Promise<void> {
  const pack = packNamed(sheet, name);
  const found: Record<string, readonly string[]> = heights[name];
  const counted = new Map<string, number>();
  const pieces = pack.slots.map((slot) => {
    const place = counted.get(slot.kind) ?? 0;
    counted.set(slot.kind, place + 1);
    const tag = slot.kind === 'steel' ? heights[name].steelTags[place] : undefined;
    return { slotId: slot.slotId, from: { typed: found[slot.kind]?.[place] ?? '', ...(tag ? { tag } : {}) } };
  });
  await call('packs.recordMockUp', { jobId, packId: pack.packId, pieces, note: '', by });
}
