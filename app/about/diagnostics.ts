// What a helper needs to know, in lines a person can read before sending them. Only counts, sizes, versions and places in
// the program: nothing that was typed goes in.

export type Diagnostics = {
  readonly writtenAt: string;
  readonly version: string;
  readonly runsOn: string;
  readonly cores: number;
  readonly memory_bytes: number;
  readonly shop: {
    readonly isDemo: boolean;
    readonly sqlite: string;
    readonly schema: number;
    readonly file_bytes: number;
    readonly log_bytes: number;
    readonly freePages: number;
    readonly rows: ReadonlyArray<readonly [table: string, rows: number]>;
    /** How it is set to write and judge. */
    readonly set: Readonly<Record<string, string>>;
  } | null;
  /** Why no shop file is open, as the code of the refusal; null: one is, or none was tried. */
  readonly trouble: string | null;
  readonly backups: { readonly count: number; readonly newestAt: string | null; readonly hasSecondPlace: boolean };
  readonly faults: readonly FaultPlace[];
};

export type FaultPlace = {
  readonly id: string;
  readonly where: string;
  /** What kind of error. What it said is left out: it may quote what was typed. */
  readonly kind: string;
  readonly frames: readonly string[];
};

/** So many lines of a fault say where it came from. */
const mostFrames = 8;

/** The faults of a log, oldest first. */
export function faultsIn(log: string): FaultPlace[] {
  return log.split(/^(?=\d{14}-\d+ )/m).flatMap((entry) => {
    const [head = '', said = '', ...rest] = entry.split('\n');
    const named = /^(?<id>\d{14}-\d+) (?<where>[a-zA-Z. ]+)$/.exec(head)?.groups;
    if (!named) return [];
    const frames = rest.flatMap((line) => /[\w.-]+\.(?:ts|js|mjs|cjs):\d+:\d+(?=\)?$)/.exec(line)?.[0] ?? []);
    const kind = /^(?<kind>\w*Error)\b/.exec(said)?.groups?.kind ?? 'no error';
    return [{ id: named.id ?? '', where: named.where ?? '', kind, frames: frames.slice(0, mostFrames) }];
  });
}

/** One text, a fact a line. */
export function diagnosticsText(facts: Diagnostics): string {
  const { shop, backups } = facts;
  const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
  const lines = [
    'Thoubook diagnostics',
    'It holds versions, sizes, counts and places in the program: no customer, unit, part, person or reading.',
    '',
    `written ${facts.writtenAt}`,
    `version ${facts.version}`,
    `runs on ${facts.runsOn}, ${facts.cores} cores, ${megabytes(facts.memory_bytes)} of memory`,
    '',
    ...(shop
      ? [
          `${shop.isDemo ? 'demo shop' : 'shop file'}, schema ${shop.schema}, SQLite ${shop.sqlite}, ${megabytes(shop.file_bytes)}, log ${megabytes(shop.log_bytes)}, ${shop.freePages} free pages`,
          ...Object.entries(shop.set).map(([name, value]) => `  ${name}: ${value}`),
          'rows',
          ...shop.rows.map(([table, rows]) => `  ${table}: ${rows}`),
        ]
      : [`no shop file is open${facts.trouble === null ? '' : `: ${facts.trouble}`}`]),
    '',
    `backups: ${backups.count}, newest ${backups.newestAt ?? 'none'}, second place ${backups.hasSecondPlace ? 'chosen' : 'not chosen'}`,
    '',
    `faults: ${facts.faults.length}`,
    ...facts.faults.map(({ id, where, kind, frames }) => `  ${id} ${where} ${kind} ${frames.join(' < ')}`),
  ];
  return `${lines.join('\n')}\n`;
}
