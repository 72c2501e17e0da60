import { router } from '../../trpc/procedures.js';
import { getMe } from './get-me.js';

export const sessionRouter = router({ me: getMe });
