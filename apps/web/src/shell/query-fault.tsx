import { errorText, mayHelpAgain } from '../api/api-error';
import { Fault } from '../look/notice';

export interface QueryFaultProps {
  readonly query: { readonly error: unknown; readonly refetch: () => unknown };
}

/** What went wrong with something that was asked for, and another try where that can help. */
export function QueryFault({ query: { error, refetch } }: QueryFaultProps) {
  const again = mayHelpAgain(error) ? { title: 'Try again', run: () => void refetch() } : undefined;
  return <Fault text={errorText(error)} action={again} />;
}
