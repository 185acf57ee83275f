export function SheetScreen(_: { familyId: number; number?: number }) {
  return null;
}
