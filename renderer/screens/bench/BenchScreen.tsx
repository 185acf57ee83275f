// The open units side by side, and where each check of the chosen one stands.
export function BenchScreen() {
  return <h1 className="say">Bench</h1>;
}
