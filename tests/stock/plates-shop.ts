// A shop with steels on the bench, and the Forward pack of KX3 to put them into.
import { shopWithParts } from './shop-with-parts.ts';

export const thou = (value: number): number => Math.round(value * 25_400);
export const outline = 'KX3 forward';
/** Half a thou: the width of the classes that steels are sorted into. */
export const class_nm = 12_700;

type From = { pieceId: number } | { typed: string; tag?: string } | { canId: number };

export async function shopWithPlates() {
  const shop = await shopWithParts();
  const { call, familyId, by } = shop;
  const sheet = await call('specs.getRevision', { familyId });
  const forward = sheet.packs.find((pack) => pack.name === 'Forward');
  if (!forward) throw new Error('the sheet has no Forward pack');
  const { packId } = forward;
  const steelSlots = forward.slots.filter((slot) => slot.kind === 'steel').map((slot) => slot.slotId);
  const measure = (typed: string, into: object, more: object = {}) => ({
    ...{ kind: 'steel', outline, typed, into, batchId: null, micrometer: 'M-2', isSure: false, by },
    ...more,
  });
  const single = async (typed: string, tag = '', more: object = {}) => {
    const { into } = await call('stock.addMeasured', measure(typed, { kind: 'single', tag }, more));
    return into.kind === 'single' ? into.pieceId : 0;
  };
  const intoCan = async (typed: string, more: object = {}) => {
    const { into } = await call('stock.addMeasured', measure(typed, { kind: 'can', class_nm }, more));
    if (into.kind !== 'can') throw new Error('it went among the single plates');
    return into;
  };
  /** Steels from the piston on; slots not named keep what they had. */
  const mockUp = (jobId: number, steels: ReadonlyArray<From | null>) => ({
    jobId,
    packId,
    pieces: steels.flatMap((from, index) => (from ? [{ slotId: steelSlots[index], from }] : [])),
    note: '',
    by,
  });
  const putIn = (jobId: number, steels: ReadonlyArray<From | null>) =>
    call('packs.recordMockUp', mockUp(jobId, steels));
  /** The code and the sentence of a refusal. */
  const refused = async (method: string, input: unknown) => {
    const failure = await shop.refusal(method, input);
    if (failure.kind !== 'refusal') throw new Error(`${method} failed: ${failure.message}`);
    return failure;
  };
  const plates = async (state: string | null = null) =>
    call('stock.listPlates', { outline, text: '', state, offset: 0, limit: 1000 });
  const stateOf = async (pieceId: number) => {
    const { state, why } = await call('stock.getPlate', { pieceId });
    return why === '' ? state : `${state}: ${why}`;
  };
  const loose = async () => (await call('stock.listLoose', { outline })).pieces.map((piece) => piece.pieceId);
  return { ...shop, packId, steelSlots, measure, refused, single, intoCan, mockUp, putIn, plates, stateOf, loose };
}

/** What is not to be seen on a good plate. */
export const clean = { flat: 'flat', hasHotSpots: false, isGlazed: false, isConed: false, isUsable: true, note: '' };

export const found = [{ typed: '77.0' }, { typed: '76.5' }, { typed: '78.0' }, { typed: '77.5' }];
