// The whole renderer: the answers it keeps, the language of its controls, the router.
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { I18nProvider } from 'react-aria-components';
import { createQueryClient, followChanges } from '../rpc/query-client.ts';
import { router } from './routes.tsx';

export function App() {
  const [queryClient] = useState(createQueryClient);
  useEffect(() => followChanges(queryClient), [queryClient]);
  return (
    <I18nProvider locale="en-US">
      <QueryClientProvider client={queryClient}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </I18nProvider>
  );
}
