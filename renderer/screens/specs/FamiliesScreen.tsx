export function FamiliesScreen() {
  return null;
}
