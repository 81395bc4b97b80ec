import { newDictation } from '../note/dictation/dictation.ts';

/** The phrase table and its engine as a program of their own beside the server: loaded when a note holds a dictation. */
export const dictation = newDictation();
