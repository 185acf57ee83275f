// Inputs nobody's hand would make, drawn from the contract's own shapes as JSON Schema (draft 2020-12): mostly of the right
// form with wild values in it, sometimes of no form at all.
import { z } from 'zod';
import { contract, type MethodName } from '../../app/contract/contract.ts';
import type { Draw } from '../bench/seeded.ts';

type Schema = {
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly maxLength?: number;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
};

const tame = [
  '4 23',
  '.0770',
  '77',
  '1.5025 1.5000',
  'KX3',
  'Forward',
  '2026-11-25',
  '2026-11-25T08:00:00.000Z',
  'RA',
  '',
];
const wild = [
  '<img src=x onerror=alert(1)>',
  "'; drop table jobs; --",
  '=HYPERLINK("x")',
  '%s%n{{7*7}}',
  '__proto__',
  'constructor',
  '\u202eright to left\u202c',
  'Z\u0351\u036b\u0343\u036a\u0302\u036b\u033d',
  'half \ud800',
  'nul \0 inside',
  '\u{1f527}'.repeat(50),
  '9'.repeat(400),
  '-1e308 1e308',
  'NaN Infinity',
  '2026-02-31',
  '99999-99-99T99:99:99Z',
  '../../../no/such/place',
  '   ',
  '\r\n\t',
];
const numbers = [0, -1, 0.5, 2 ** 31, -(2 ** 53), 2 ** 53, 1e308, Number.NaN, Number.POSITIVE_INFINITY];

export class Nonsense {
  readonly #draw: Draw;
  readonly #folder: string;
  /** Half of the calls are nearly sensible, to come past the door. */
  #isWild = true;
  readonly #schemas = new Map<MethodName, Schema>();

  /** Folders and files are named below `folder` or nowhere, so that what is drawn can do no harm outside it. */
  constructor(draw: Draw, folder: string) {
    this.#draw = draw;
    this.#folder = folder;
  }

  inputFor(name: MethodName): unknown {
    const known = this.#schemas.get(name);
    const schema = known ?? (z.toJSONSchema(contract[name].input, { io: 'input', unrepresentable: 'any' }) as Schema);
    this.#schemas.set(name, schema);
    this.#isWild = this.#oneIn(2);
    if (this.#isWild && this.#oneIn(40)) return this.#anything(0);
    return this.#of(schema, schema, '');
  }

  #oneIn(many: number): boolean {
    return this.#draw.whole(1, many) === 1;
  }

  #from<T>(all: readonly T[]): T {
    return all[this.#draw.whole(0, all.length - 1)] as T;
  }

  #of(schema: Schema, root: Schema, key: string): unknown {
    if (this.#isWild && this.#oneIn(60)) return this.#anything(0);
    if (schema.$ref) return this.#of(root.$defs?.[schema.$ref.replace('#/$defs/', '')] ?? root, root, key);
    const branches = schema.anyOf ?? schema.oneOf;
    if (branches) return this.#of(this.#from(branches), root, key);
    if (schema.allOf) return Object.assign({}, ...schema.allOf.map((each) => this.#of(each, root, key)));
    if (schema.const !== undefined) return schema.const;
    if (schema.enum) return this.#from(schema.enum);
    switch (schema.type) {
      case 'object':
        return this.#object(schema, root);
      case 'array':
        return this.#array(schema, root, key);
      case 'integer':
      case 'number':
        return this.#number(schema);
      case 'boolean':
        return this.#oneIn(2);
      case 'null':
        return null;
      default:
        return this.#text(schema, key);
    }
  }

  #object(schema: Schema, root: Schema): unknown {
    const whole = Object.entries(schema.properties ?? {}).map(
      ([key, each]) => [key, this.#of(each, root, key)] as const,
    );
    const kept = this.#isWild && this.#oneIn(25) ? whole.filter(() => !this.#oneIn(3)) : whole;
    return Object.fromEntries(
      this.#isWild && this.#oneIn(40) ? [...kept, [this.#from(wild), this.#anything(0)]] : kept,
    );
  }

  #array(schema: Schema, root: Schema, key: string): unknown[] {
    if (schema.prefixItems) return schema.prefixItems.map((each) => this.#of(each, root, key));
    const length = this.#oneIn(50) ? 300 : this.#draw.whole(schema.minItems ?? 0, 4);
    return Array.from({ length }, () => this.#of(schema.items ?? {}, root, key));
  }

  #number({ minimum = 0, maximum = 40 }: Schema): number {
    if (this.#isWild && this.#oneIn(12)) return this.#from(numbers);
    const low = Math.max(minimum, -1000);
    return this.#draw.whole(low, Math.max(low, Math.min(maximum, low + 12)));
  }

  #text({ maxLength = 2000 }: Schema, key: string): string {
    if (/folder|file|path/i.test(key))
      return this.#oneIn(2) ? this.#folder : this.#from(['', '../../../no/such/place']);
    if (this.#isWild && this.#oneIn(30))
      return this.#from(wild)
        .repeat(this.#draw.whole(1, 400))
        .slice(0, maxLength + 1);
    return this.#oneIn(this.#isWild ? 3 : 8) ? this.#from(wild) : this.#from(tame);
  }

  #anything(depth: number): unknown {
    switch (this.#draw.whole(0, depth > 3 ? 4 : 6)) {
      case 0:
        return null;
      case 1:
        return this.#from(numbers);
      case 2:
        return this.#from(wild);
      case 3:
        return true;
      case 4:
        return undefined;
      case 5:
        return Array.from({ length: this.#draw.whole(0, 3) }, () => this.#anything(depth + 1));
      default:
        return Object.fromEntries([[this.#from(wild), this.#anything(depth + 1)]]);
    }
  }
}
