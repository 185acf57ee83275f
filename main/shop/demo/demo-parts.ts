// The shelves of the demo shop: invented parts of two invented suppliers, what came in, and what the first ticket took.
import type { PartKind } from '../../../app/stock/parts.contract.ts';
import type { Caller } from './kx3-job.ts';

const frictions = 'Brightwater Friction';
const hardware = 'Ostrander Supply';

type Shelved = {
  number: string;
  description: string;
  kind: PartKind;
  supplier: string;
  bin: string;
  cost: string;
  price: string;
  /** Reorder at this many, so many at a time. */
  reorder?: readonly [point: number, quantity: number];
  unitOfIssue?: string;
  coreCharge?: string;
  /** Fits any unit. */
  isForAny?: boolean;
  /** What came in, the newest first: how many, how many days ago, and the mark on the box or the invoice. */
  received?: ReadonlyArray<{ count: number; daysAgo: number } & ({ mark: string } | { invoice: string })>;
};

function shelved(
  [number, description, kind, supplier, bin, cost, price]: readonly [
    number: string,
    description: string,
    kind: PartKind,
    supplier: string,
    bin: string,
    cost: string,
    price: string,
  ],
  more: Partial<Shelved> = {},
): Shelved {
  return { number, description, kind, supplier, bin, cost, price, ...more };
}

const marked = (count: number, daysAgo: number, mark: string) => ({ count, daysAgo, mark });
const invoiced = (count: number, daysAgo: number, invoice: string) => ({ count, daysAgo, invoice });

const parts: readonly Shelved[] = [
  shelved(['KX3-FR-080', 'Forward friction, 80 thou', 'friction', frictions, 'C4', '4.10', '7.50'], {
    reorder: [8, 12],
    received: [marked(12, 23, 'FB-2231'), marked(12, 140, 'FB-1907')],
  }),
  shelved(['KX3-FR-084', 'Direct friction, 84 thou', 'friction', frictions, 'C4', '4.35', '7.90'], {
    reorder: [8, 12],
    received: [marked(6, 23, 'FB-2240')],
  }),
  shelved(['KX3-FR-080L', 'Low/reverse friction, 80 thou', 'friction', frictions, 'C5', '5.20', '9.40'], {
    reorder: [10, 10],
    received: [marked(20, 61, 'FB-2102')],
  }),
  shelved(['KX3-ST-070', 'Low/reverse steel, 70 thou', 'steel', frictions, 'D1', '2.10', '4.00'], {
    reorder: [10, 20],
    received: [invoiced(24, 61, '8702')],
  }),
  shelved(['KX3-ST-077', 'Forward steel, 77 thou', 'steel', frictions, 'D1', '2.30', '4.40'], {
    reorder: [10, 20],
    received: [invoiced(20, 23, '8841'), invoiced(5, 140, '7916')],
  }),
  shelved(['KX3-ST-092', 'Direct steel, 92 thou', 'steel', frictions, 'D2', '2.45', '4.60'], {
    reorder: [10, 20],
    received: [invoiced(14, 23, '8841')],
  }),
  shelved(['KX3-WP-085', 'Low/reverse wave plate, 85 thou', 'steel', frictions, 'D3', '6.80', '12.50'], {
    reorder: [2, 4],
    received: [invoiced(4, 61, '8702')],
  }),
  shelved(['KX3-PP-250', 'Forward pressure plate, 250 thou', 'pressure plate', frictions, 'D4', '18.00', '32.00'], {
    reorder: [1, 2],
    received: [invoiced(2, 88, '8455')],
  }),
  shelved(['KX3-PP-310', 'Direct pressure plate, 310 thou', 'pressure plate', frictions, 'D4', '19.50', '34.00'], {
    reorder: [1, 2],
    received: [invoiced(1, 88, '8455')],
  }),
  shelved(['KX3-SR-074', 'Low/reverse snap ring, 74 thou', 'snap ring', hardware, 'E1', '3.10', '6.00'], {
    reorder: [2, 5],
    received: [invoiced(5, 47, 'OS-5518')],
  }),
  shelved(['KX3-SR-080', 'Low/reverse snap ring, 80 thou', 'snap ring', hardware, 'E1', '3.10', '6.00'], {
    reorder: [2, 5],
    received: [invoiced(5, 47, 'OS-5518')],
  }),
  shelved(['KX3-SR-086', 'Low/reverse snap ring, 86 thou', 'snap ring', hardware, 'E1', '3.10', '6.00'], {
    reorder: [2, 5],
    received: [invoiced(2, 47, 'OS-5518')],
  }),
  shelved(['KX3-SR-F62', 'Forward snap ring, 62 thou', 'snap ring', hardware, 'E2', '2.80', '5.50'], {
    received: [invoiced(6, 112, 'OS-5107')],
  }),
  shelved(['KX3-SL-11', 'Forward piston seal, inner', 'seal', hardware, 'F1', '1.15', '2.60'], {
    reorder: [6, 10],
    received: [invoiced(10, 47, 'OS-5518')],
  }),
  shelved(['KX3-SL-12', 'Forward piston seal, outer', 'seal', hardware, 'F1', '1.45', '3.10'], {
    reorder: [6, 10],
    received: [invoiced(10, 47, 'OS-5518')],
  }),
  shelved(['KX3-SL-21', 'Direct piston seal, inner', 'seal', hardware, 'F1', '1.15', '2.60'], {
    reorder: [6, 10],
    received: [invoiced(4, 112, 'OS-5107')],
  }),
  shelved(['KX3-SL-22', 'Direct piston seal, outer', 'seal', hardware, 'F1', '1.45', '3.10'], {
    reorder: [6, 10],
    received: [invoiced(9, 112, 'OS-5107')],
  }),
  shelved(['KX3-SL-31', 'Pump seal, front', 'seal', hardware, 'F2', '4.90', '9.80'], {
    reorder: [4, 6],
    received: [marked(6, 47, 'PS-0916')],
  }),
  shelved(['KX3-SL-41', 'Extension housing seal', 'seal', hardware, 'F2', '5.60', '10.90'], {
    reorder: [3, 6],
    received: [marked(5, 47, 'PS-0921')],
  }),
  shelved(['KX3-SL-51', 'Turbine shaft ring, teflon', 'seal', hardware, 'F3', '0.95', '2.20'], {
    reorder: [12, 24],
    received: [invoiced(24, 47, 'OS-5518')],
  }),
  shelved(['KX3-GS-01', 'Pan gasket', 'seal', hardware, 'F4', '6.20', '12.00'], {
    reorder: [4, 6],
    received: [invoiced(6, 47, 'OS-5518')],
  }),
  shelved(['KX3-GS-02', 'Pump gasket', 'seal', hardware, 'F4', '3.40', '7.20'], {
    reorder: [4, 6],
    received: [invoiced(6, 112, 'OS-5107')],
  }),
  shelved(['KX3-GS-03', 'Valve body gaskets, pair', 'seal', hardware, 'F4', '8.10', '15.50'], {
    unitOfIssue: 'pair',
    reorder: [3, 4],
    received: [invoiced(5, 112, 'OS-5107')],
  }),
  shelved(['KX3-BU-01', 'Pump body bushing', 'bushing', hardware, 'G1', '3.75', '8.00'], {
    reorder: [3, 6],
    received: [marked(6, 47, 'BW-340')],
  }),
  shelved(['KX3-BU-02', 'Stator bushing', 'bushing', hardware, 'G1', '3.30', '7.00'], {
    reorder: [3, 6],
    received: [marked(6, 112, 'BW-317')],
  }),
  shelved(['KX3-BU-03', 'Direct drum bushing', 'bushing', hardware, 'G1', '4.10', '8.60'], {
    reorder: [3, 6],
    received: [marked(3, 112, 'BW-318')],
  }),
  shelved(['KX3-BU-04', 'Extension housing bushing', 'bushing', hardware, 'G2', '4.60', '9.20']),
  shelved(['KX3-TW-066', 'Front end play washer, 66 thou', 'washer', hardware, 'G3', '2.20', '4.80'], {
    received: [invoiced(3, 112, 'OS-5107')],
  }),
  shelved(['KX3-TW-072', 'Front end play washer, 72 thou', 'washer', hardware, 'G3', '2.20', '4.80'], {
    received: [invoiced(3, 112, 'OS-5107')],
  }),
  shelved(['KX3-TW-078', 'Front end play washer, 78 thou', 'washer', hardware, 'G3', '2.20', '4.80'], {
    reorder: [2, 4],
    received: [invoiced(4, 112, 'OS-5107')],
  }),
  shelved(['KX3-VB-10', 'Pressure regulator spring', 'valve-body part', hardware, 'H1', '2.90', '6.50'], {
    reorder: [2, 4],
    received: [marked(4, 88, 'SP-77')],
  }),
  shelved(['KX3-VB-11', 'Boost valve and sleeve', 'valve-body part', hardware, 'H1', '27.00', '48.00'], {
    reorder: [1, 2],
    received: [marked(2, 88, 'VS-208')],
  }),
  shelved(['KX3-VB-12', 'Check balls, set of 7', 'valve-body part', hardware, 'H2', '2.10', '5.00'], {
    unitOfIssue: 'set',
    received: [invoiced(8, 88, 'OS-5320')],
  }),
  shelved(['KX3-FL-01', 'Filter, pan side', 'other', hardware, 'H3', '9.40', '18.50'], {
    reorder: [4, 6],
    received: [invoiced(8, 47, 'OS-5518')],
  }),
  shelved(['KX3-TC-11', 'Torque converter, 11 in, rebuilt', 'other', hardware, 'floor', '165.00', '289.00'], {
    coreCharge: '60.00',
    received: [marked(1, 12, 'TC-4471')],
  }),
  shelved(['FLUID-M3', 'Transmission fluid, multi-vehicle', 'fluid', hardware, 'drum', '3.90', '8.50'], {
    unitOfIssue: 'quart',
    isForAny: true,
    reorder: [48, 96],
    received: [marked(96, 30, 'L 26-311')],
  }),
  shelved(['GEL-12', 'Assembly gel, 12 oz tub', 'fluid', hardware, 'bench', '7.80', '14.00'], {
    unitOfIssue: 'tub',
    isForAny: true,
    reorder: [2, 6],
    received: [marked(2, 112, 'AG-0419')],
  }),
  shelved(['CLN-20', 'Parts cleaner, aerosol', 'fluid', hardware, 'bench', '3.20', '6.50'], {
    unitOfIssue: 'can',
    isForAny: true,
    reorder: [6, 12],
    received: [invoiced(12, 30, 'OS-5601')],
  }),
  shelved(['CP-38', 'Cup plug, 3/8 in', 'other', hardware, 'H4', '0.40', '1.20'], {
    isForAny: true,
    received: [invoiced(50, 112, 'OS-5107')],
  }),
];

/** What lies in the master kit. */
const kitContents: ReadonlyArray<readonly [number: string, quantity: number]> = [
  ['KX3-FR-080', 4],
  ['KX3-FR-084', 4],
  ['KX3-FR-080L', 5],
  ['KX3-SL-11', 1],
  ['KX3-SL-12', 1],
  ['KX3-SL-21', 1],
  ['KX3-SL-22', 1],
  ['KX3-SL-31', 1],
  ['KX3-SL-41', 1],
  ['KX3-SL-51', 4],
  ['KX3-GS-01', 1],
  ['KX3-GS-02', 1],
  ['KX3-GS-03', 1],
];

/** What the ticket of the half-built unit has taken so far. */
const pulled: ReadonlyArray<readonly [number: string, quantity: number]> = [
  ['KX3-KIT-M', 1],
  ['KX3-BU-01', 1],
  ['KX3-SR-086', 1],
  ['FLUID-M3', 9],
];

type DemoParts = { call: Caller; familyId: number; jobId: number; now: string; by: number };

/** Puts the parts on their shelves and pulls what the ticket took. */
export async function stockTheShelves({ call, familyId, jobId, now, by }: DemoParts): Promise<void> {
  const partIds = new Map<string, number>();
  const idOf = (number: string): number => {
    const partId = partIds.get(number);
    if (partId === undefined) throw new Error(`the demo has no part ${number}`);
    return partId;
  };
  const contents = () => kitContents.map(([number, quantity]) => ({ partId: idOf(number), quantity }));
  for (const each of [...parts, masterKit]) {
    const { reorder, isForAny = false, received = [], unitOfIssue = 'each', coreCharge = '', ...said } = each;
    const { partId } = await call('stock.savePart', {
      ...said,
      partId: null,
      unitOfIssue,
      coreCharge,
      reorderPoint: reorder?.[0] ?? null,
      reorderQuantity: reorder?.[1] ?? null,
      familyIds: isForAny ? [] : [familyId],
      contents: each === masterKit ? contents() : [],
      by,
    });
    partIds.set(each.number, partId);
    for (const came of received.toReversed()) {
      await call('stock.receiveBatch', {
        partId,
        quantity: came.count,
        receivedOn: dayBefore(now, came.daysAgo),
        mark: 'mark' in came ? came.mark : '',
        document: 'invoice' in came ? came.invoice : '',
        unitCost: '',
        by,
      });
    }
  }
  for (const [number, quantity] of pulled) {
    await call('stock.pullForJob', { jobId, partId: idOf(number), batchId: null, quantity, by });
  }
}

const masterKit = shelved(['KX3-KIT-M', 'Master kit', 'kit', frictions, 'A1', '96.00', '169.00'], {
  reorder: [1, 2],
  received: [invoiced(3, 23, '8841'), invoiced(1, 140, '7916')],
});

function dayBefore(now: string, days: number): string {
  return new Date(Date.parse(now) - days * 86_400_000).toISOString().slice(0, 10);
}
