import { TRPCError } from '@trpc/server';
import { TRPC_ERROR_CODES_BY_KEY } from '@trpc/server/rpc';
import { getHTTPStatusCodeFromError } from '@trpc/server/http';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { apiErrors, type ApiErrorCode } from './api-errors.js';
import { formatError } from './format-error.js';
import { refuse } from './refusal.js';

const codes = Object.keys(apiErrors) as ApiErrorCode[];

describe.each(codes)('%s', (code) => {
  it('has the HTTP status that the transport gives it', () => {
    const { status, transport } = apiErrors[code];
    expect(TRPC_ERROR_CODES_BY_KEY[transport]).toBeLessThan(0);
    expect(getHTTPStatusCodeFromError(new TRPCError({ code: transport }))).toBe(status);
  });

  it('says what is wrong in a sentence', () => {
    expect(apiErrors[code].text).toMatch(/^[A-Z].*(\.|\})$/);
  });
});

describe('formatError', () => {
  it('fills in the details and names the code', () => {
    const error = refuse('CHANGED_MEANWHILE', { what: 'system', given: 3, current: 5 });
    const answer = formatError(error, 'system.save', 'r1');
    expect(answer.message).toContain('you saw version 3, it is now version 5');
    expect(answer.data).toEqual({
      code: 'CONFLICT',
      httpStatus: 409,
      reason: 'CHANGED_MEANWHILE',
      path: 'system.save',
    });
  });

  it('names each field of an input that is not valid', () => {
    const parsed = z.object({ speed: z.number().max(2000) }).safeParse({ speed: 3000 });
    const error = new TRPCError({ code: 'BAD_REQUEST', cause: parsed.error });
    const answer = formatError(error, 'x', 'r1');
    expect(answer.data).toMatchObject({ reason: 'INPUT_NOT_VALID', fields: [{ field: 'speed' }] });
    expect(answer.message).toContain('speed: Too big: expected number to be <=2000');
  });

  it('keeps what a fault says to itself', () => {
    const error = new TRPCError({ code: 'INTERNAL_SERVER_ERROR', cause: new Error('password is hunter2') });
    const answer = formatError(error, 'x', 'r42');
    expect(JSON.stringify(answer)).not.toContain('hunter2');
    expect(answer.message).toContain('r42');
    expect(answer.data.reason).toBe('FAULT');
  });
});
