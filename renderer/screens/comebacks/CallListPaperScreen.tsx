// Whom to call on the screen before it is saved or printed.
import { Link } from '@tanstack/react-router';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';

export function CallListPaperScreen() {
  return (
    <PrintedPaper
      title="Whom to call"
      facts={<Link to="/comebacks/calls">The list</Link>}
      method="comebacks.printToCall"
      of={{}}
    />
  );
}
