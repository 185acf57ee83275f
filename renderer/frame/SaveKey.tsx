// A key that has a file made and saves it under its own name.
import { useMutation } from '@tanstack/react-query';
import type { PrintedFile } from '../../app/stock/lists.contract.ts';
import { Button, type ButtonProps } from '../components/Button.tsx';
import { saveFile } from '../rpc/printed-file.ts';
import { FailureSentence } from './FailureSentence.tsx';

type SaveKeyProps = Pick<ButtonProps, 'kind' | 'children'> & { get: () => Promise<PrintedFile> };

export function SaveKey({ get, children, kind = 'plain' }: SaveKeyProps) {
  const made = useMutation({ mutationFn: get, onSuccess: saveFile });
  return (
    <>
      <Button kind={kind} isPending={made.isPending} onPress={() => made.mutate()}>
        {children}
      </Button>
      <FailureSentence error={made.error} />
    </>
  );
}
