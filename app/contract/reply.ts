// What comes back over the contract: the value, or one of three kinds of failure and no fourth.

/** `refusal`: expected, said where the person is. `fault`: a bug, logged under `id`. `storage`: the disk or the file. */
export type Failure =
  | { readonly kind: 'refusal'; readonly code: string; readonly message: string; readonly field?: string }
  | { readonly kind: 'fault'; readonly id: string; readonly message: string }
  | { readonly kind: 'storage'; readonly code: string; readonly message: string };

export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Failure };
