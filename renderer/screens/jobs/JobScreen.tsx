export function JobScreen(_: { jobId: number }) {
  return null;
}
