import type { FastifyRequest } from 'fastify';
import { Refusal } from '../errors/refusal.js';
import { apiErrorText } from '../errors/api-errors.js';

const mebibyte = 2 ** 20;

/** Enough for the largest document of the trade many times over. */
export const bodyLimitBytes = mebibyte;

function tooLarge(): Refusal {
  return new Refusal(
    'BODY_TOO_LARGE',
    apiErrorText('BODY_TOO_LARGE', { allowed: `${bodyLimitBytes / mebibyte} MiB` }),
  );
}

/** Reads the body of a request as the text of one JSON document; an empty body is an empty text. */
export async function readJsonText(_: FastifyRequest, payload: AsyncIterable<Buffer>): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of payload) {
    size += part.length;
    // Read to its end all the same: who is cut off while sending does not get to read why.
    if (size > bodyLimitBytes) parts.length = 0;
    else parts.push(part);
  }
  if (size > bodyLimitBytes) throw tooLarge();
  const text = Buffer.concat(parts).toString('utf8');
  try {
    if (text !== '') JSON.parse(text);
    return text;
  } catch {
    throw new Refusal('BODY_NOT_JSON', apiErrorText('BODY_NOT_JSON', {}));
  }
}
