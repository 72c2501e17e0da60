export type { AppRouter } from './routers/router.js';
