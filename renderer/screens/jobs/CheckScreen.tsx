export function CheckScreen(_: { jobId: number; checkId: number }) {
  return null;
}
