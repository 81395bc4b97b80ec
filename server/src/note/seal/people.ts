import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { by, type SealFinding } from './finding.ts';
import { noteId } from './seal-note.ts';
import type { Meaning, Statement } from './statement.ts';

/** Whether the people who sealed a note are those who answer for it. */
export function ofPeople(
  reading: NoteReading,
  statements: readonly Statement[],
  department: Department | null,
): readonly SealFinding[] {
  if (statements.length === 0) return [];
  return [...ofAuthor(reading, statements), ...ofSupervision(reading, statements), ...ofRights(statements, department)];
}

const sealedAs = (meaning: Meaning, statements: readonly Statement[]): readonly Statement[] =>
  statements.filter(({ predicate }) => predicate.meaning === meaning);

const signersAs = (meaning: Meaning, statements: readonly Statement[]): readonly string[] =>
  sealedAs(meaning, statements).map(({ predicate }) => predicate.signer);

/** Whoever wrote the note seals it; the others seal beside them. */
function ofAuthor(reading: NoteReading, statements: readonly Statement[]): readonly SealFinding[] {
  const seals = sealedAs('author', statements);
  if (seals.length === 0) {
    return [
      {
        finding: 'seal-author-missing',
        severity: 'error',
        message: `The note ${noteId(reading)} has no seal of its author: ${statements.map(({ predicate }) => `${predicate.signer} sealed it as ${predicate.meaning}`).join(', ')}.`,
      },
    ];
  }
  const authors = authorsOf(reading);
  return seals.flatMap((seal): readonly SealFinding[] =>
    authors.length === 0 || authors.includes(seal.predicate.signer)
      ? []
      : [
          {
            finding: 'seal-author-not-of-note',
            severity: 'error',
            message: `${by(seal)} is not of an author of this note: it is signed by ${authors.join(' and ')}. Who only read it seals as supervisor or verifier.`,
          },
        ],
  );
}

/** Whom the note itself names as its authors: in its signature. */
function authorsOf(reading: NoteReading): readonly string[] {
  if (reading.kind === null || reading.kind === 'department') return [];
  const signed = reading.note.signed?.items ?? [];
  return signed.flatMap(({ by: who, meaning }) =>
    who === undefined || meaning?.value !== 'author' ? [] : [who.value],
  );
}

/** The note of a trainee needs the seal of a supervisor as well, who is no trainee. */
function ofSupervision(reading: NoteReading, statements: readonly Statement[]): readonly SealFinding[] {
  if (reading.kind !== 'operation') return [];
  const authors = signersAs('author', statements);
  const trainees = (reading.note.team?.items ?? []).filter(({ grade }) => /trainee/u.test(grade?.value ?? ''));
  const trainee = trainees.find(({ ref }) => authors.includes(ref?.value ?? ''));
  const isTrainee = (signer: string) => trainees.some(({ ref }) => ref?.value === signer);
  const supervisors = signersAs('supervisor', statements);
  if (!trainee || supervisors.some((signer) => !isTrainee(signer))) return [];
  const but = supervisors.length === 0 ? '' : `: ${supervisors.join(' and ')} sealed it as one and is a trainee`;
  const message = `The note of ${trainee.ref?.value ?? 'a trainee'} (${trainee.grade?.value ?? 'trainee'}) has no seal of a supervisor yet${but}.`;
  return [{ finding: 'seal-supervisor-missing', severity: 'error', message }];
}

/**
 * Who may not sign alone needs a supervisor, and supervises nobody. A warning, because the list of staff says what
 * holds today, and the seal may be old.
 */
function ofRights(statements: readonly Statement[], department: Department | null): readonly SealFinding[] {
  const isRefused = (signer: string): boolean => mayNotSign(signer, department);
  const isSupervised = signersAs('supervisor', statements).some((signer) => !isRefused(signer));
  return statements
    .filter(({ predicate }) => isRefused(predicate.signer) && !(predicate.meaning === 'author' && isSupervised))
    .map((seal) => ({
      finding: 'seal-signer-may-not-sign',
      severity: 'warning',
      message: `${by(seal)} is of somebody who may not sign notes${seal.predicate.meaning === 'author' ? ' alone' : ''}, as the department lists it today. ${seal.predicate.meaning === 'author' ? 'A supervisor has to seal as well.' : 'Have it sealed by somebody who may.'}`,
    }));
}

/** Whether the list of staff says that a person may not sign. */
function mayNotSign(signer: string, department: Department | null): boolean {
  return department?.staff?.items.find(({ ref }) => ref?.value === signer)?.['may-sign']?.value === false;
}
