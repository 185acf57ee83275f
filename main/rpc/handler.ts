// What a room must provide: one function for each of its methods, from parsed input to output.
import type { MethodName, Output, ParsedInput } from '../../app/contract/contract.ts';
import type { Desk } from '../shop/desk.ts';

type Within<Room extends string> = Extract<MethodName, `${Room}.${string}`>;

export type Handlers<Room extends string> = {
  [M in Within<Room>]: (desk: Desk, input: ParsedInput<M>) => Promise<Output<M>>;
};
