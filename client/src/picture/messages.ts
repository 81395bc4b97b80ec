import type { Picture } from '@sideport/server/language-server/own-requests.ts';

/** From the extension to the page of the picture. null: there is nothing to draw. */
export interface ToPage {
  readonly picture: Picture | null;
}

/** From the page to the extension. */
export type FromPage =
  | { readonly kind: 'ready' }
  /** A part of a drawing was chosen, by its place in the note. */
  | { readonly kind: 'go'; readonly line: number; readonly character: number };
