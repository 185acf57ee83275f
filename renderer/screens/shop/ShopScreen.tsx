export function ShopScreen() {
  return null;
}
