export function ReportScreen(_: { jobId: number; copy: 'shop' | 'customer' }) {
  return null;
}
