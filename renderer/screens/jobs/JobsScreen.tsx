export function JobsScreen() {
  return null;
}
