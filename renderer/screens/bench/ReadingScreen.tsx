// One check of one unit, read at the bench.
export function ReadingScreen({ jobId, checkId }: { jobId: number; checkId: number }) {
  return (
    <h1 className="say">
      {jobId} {checkId}
    </h1>
  );
}
