import { NOTE_ENDING } from '../note/set/set-layout.ts';

/** The name of a new note: as wished or, where that is taken, with the first number that makes it free. */
export function freeName(stem: string, isTaken: (name: string) => boolean): string {
  let name = `${stem}${NOTE_ENDING}`;
  for (let number = 2; isTaken(name); number++) name = `${stem}-${number}${NOTE_ENDING}`;
  return name;
}
