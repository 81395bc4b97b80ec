import { newApart } from './apart.ts';

/** A program of its own beside the server. */
export const apart = newApart();
