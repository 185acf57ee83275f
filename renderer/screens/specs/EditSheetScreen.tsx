export function EditSheetScreen(_: { familyId: number }) {
  return null;
}
