export function CheckInScreen() {
  return null;
}
