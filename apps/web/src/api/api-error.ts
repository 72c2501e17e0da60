import { TRPCClientError } from '@trpc/client';
import type { AppRouter } from '@flangewise/api';

type ApiError = TRPCClientError<AppRouter>;

export const isApiError = (error: unknown): error is ApiError => error instanceof TRPCClientError;

/** The reason in the catalogue of errors, for instance `NOT_FOUND`; undefined where no answer came. */
export const reasonOf = (error: unknown): string | undefined =>
  isApiError(error) ? (error.data as { reason?: string } | undefined)?.reason : undefined;

/** Whether the server was not reached at all, or something before it answered in its place. */
export const isOffline = (error: unknown): boolean => isApiError(error) && reasonOf(error) === undefined;

/** Whether asking again can help: what a role may not do stays so. */
export const mayHelpAgain = (error: unknown): boolean => reasonOf(error) !== 'ROLE_NOT_ALLOWED';

/** What went wrong, in words for the person. */
export const errorText = (error: unknown): string => {
  if (isOffline(error)) return 'The server cannot be reached. Nothing is lost.';
  return error instanceof Error ? error.message : 'Something went wrong. Load the page again.';
};
