import { router } from '../../trpc/procedures.js';
import { createOffer } from './create-offer.js';
import { getOffer } from './get-offer.js';
import { listOffers } from './list-offers.js';
import { releaseOffer } from './release-offer.js';
import { reviseOffer } from './revise-offer.js';
import { sendOffer } from './send-offer.js';

export const offersRouter = router({
  list: listOffers,
  get: getOffer,
  create: createOffer,
  revise: reviseOffer,
  send: sendOffer,
  release: releaseOffer,
});
