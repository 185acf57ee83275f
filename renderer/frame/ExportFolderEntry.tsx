// Where an export goes: one folder for all of them, remembered on this machine.
import { TextField } from '../components/TextField.tsx';
import { refusalAbout } from '../rpc/failures.ts';
import { useDraft } from '../text/use-draft.ts';

export function useExportFolder() {
  return useDraft('folder for exports', '');
}

type ExportFolderEntryProps = { folder: ReturnType<typeof useExportFolder>; error: Error | null };

export function ExportFolderEntry({ folder, error }: ExportFolderEntryProps) {
  return (
    <TextField
      label="Into the folder"
      hint="Its whole path. Empty: the folder exports beside the shop file."
      value={folder.value}
      onChange={folder.change}
      maxLength={1000}
      refusal={refusalAbout('folder', error)}
    />
  );
}
