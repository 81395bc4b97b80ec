import type { ReportedNote, ReportedRemark } from './report-input.ts';

const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/** 64-bit FNV-1a of the UTF-8 bytes, as 16 hexadecimal figures (draft-eastlake-fnv). Not for secrets. */
export function shortHash(text: string): string {
  let hash = OFFSET_BASIS;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  }
  return hash.toString(16).padStart(16, '0');
}

export interface Fingerprinted {
  readonly remark: ReportedRemark;
  /** Of check and place in the note's structure, so that it stays when lines move or the file is renamed. */
  readonly place: string;
  /** Counts remarks of one check at one place: 1, 2, ... */
  readonly ordinal: number;
}

/** Fingerprints of a note's remarks: same check at the same field, same print, whatever the line and the words. */
export function fingerprintRemarks(note: ReportedNote): readonly Fingerprinted[] {
  const seen = new Map<string, number>();
  return note.remarks.map((remark) => {
    const place = shortHash(JSON.stringify([remark.check, remark.path]));
    const ordinal = (seen.get(place) ?? 0) + 1;
    seen.set(place, ordinal);
    return { remark, place, ordinal };
  });
}
