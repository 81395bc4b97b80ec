/** How a comment begins that marks values which a dictation proposed. Behind it stand the words of each, in quotes. */
export const PROPOSED = 'proposed from the dictation';
