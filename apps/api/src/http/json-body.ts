import { Refusal } from '../errors/refusal.js';
import { apiErrorText } from '../errors/api-errors.js';

const mebibyte = 2 ** 20;

/** Enough for the largest document of the trade many times over. */
export const bodyLimitBytes = mebibyte;
/** Enough for a file of 50 000 items many times over. */
export const fileLimitBytes = 192 * mebibyte;

function tooLarge(limit: number): Refusal {
  return new Refusal(
    'BODY_TOO_LARGE',
    apiErrorText('BODY_TOO_LARGE', { allowed: `${limit / mebibyte} MiB` }),
  );
}

/**
 * Reads the body of a request as the text of one JSON document; an empty body is an empty text.
 *
 * @param limit of the body [bytes]
 */
export async function readJsonText(payload: AsyncIterable<Buffer>, limit: number): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of payload) {
    size += part.length;
    // Read to its end all the same: who is cut off while sending does not get to read why.
    if (size > limit) parts.length = 0;
    else parts.push(part);
  }
  if (size > limit) throw tooLarge(limit);
  const text = Buffer.concat(parts).toString('utf8');
  try {
    if (text !== '') JSON.parse(text);
    return text;
  } catch {
    throw new Refusal('BODY_NOT_JSON', apiErrorText('BODY_NOT_JSON', {}));
  }
}
