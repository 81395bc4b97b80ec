import { resolve } from 'node:path';
import { readNote } from '../../note/reading/read-note.ts';
import type { SealFinding } from '../../note/seal/finding.ts';
import { verifySeals, type Before } from '../../note/seal/verify-seals.ts';
import { defineCommand } from '../command.ts';
import { isDepartmentName, shownAs } from '../file-names.ts';
import { findNotes } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { chainOf, rootId } from '../sealing/chain.ts';
import { checking } from '../sealing/keys.ts';
import { lostNotes, lostOf } from '../sealing/lost-notes.ts';
import { readRegister, REGISTER_FILE } from '../sealing/register.ts';
import { sealPath } from '../sealing/seal-files.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

interface NoteFindings {
  readonly file: string;
  readonly sealed: boolean;
  readonly findings: readonly SealFinding[];
}

export const verify = defineCommand({
  operands: 'PATH...',
  about:
    'Checks the seals of notes against the register of signers, and amendments as one chain with the note they amend.\n' +
    'Ends with 1 when a seal does not hold. Times are what the signers claimed.',
  options: {
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: ['text', 'json'],
      fallback: 'text',
      about: 'how findings are written',
    },
    register: {
      kind: 'text',
      value: 'FILE',
      about: `the register of signers (usual: ${REGISTER_FILE} beside the department file)`,
    },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file' },
  },
  run: async ({ values, paths }, world) => {
    if (paths.length === 0) throw new WrongUse('Say which notes to verify: sideport verify PATH...');
    const { inputs, missing } = await findNotes(paths, world);
    const lostIn = remembering((folder) => lostNotes(folder, world.files));
    const lost = new Set(foldersIn(paths, world).flatMap(lostIn));
    if (inputs.length === 0 && lost.size === 0) throw new WrongUse(missing.join('\n'));
    const sets = new NoteSets(world, values.department);
    const problems = [...missing];
    const seen = new Set<string>();
    const notes: NoteFindings[] = [];
    for (const input of inputs) {
      if (input.path === null || isDepartmentName(input.path) || seen.has(input.file)) continue;
      try {
        const reading = readNote(await readInput(input, world));
        const { set, department = null } = sets.around(input, reading);
        const { folder } = sets.rootAround(input.path);
        const register = readRegister(values.register, folder, world);
        const id = rootId(reading);
        const links = id === undefined ? [] : chainOf(id, set, world);
        if (links.some(({ seals }) => seals.length > 0) && register === undefined) {
          throw new FileProblem(
            `${input.file}: there is no register of signers (${REGISTER_FILE}) to verify its seals with. Name one: --register FILE.`,
          );
        }
        let before: Before = { last: undefined, signedAt: undefined };
        for (const link of links) {
          const against = { register: register ?? { signers: [], revoked: [] }, department };
          const verified = verifySeals(link, against, before, checking);
          before = verified.after;
          seen.add(link.file);
          notes.push({ file: link.file, sealed: link.seals.length > 0, findings: verified.findings });
        }
        for (const note of lostOf(links, lostIn(folder), world.files)) lost.add(note);
        problems.push(...(register?.problems ?? []));
      } catch (error) {
        if (!(error instanceof FileProblem)) throw error;
        problems.push(error.message.includes(input.file) ? error.message : `${input.file}: ${error.message}.`);
      }
    }
    for (const note of lost) notes.push(lostFinding(shownAs(note, world.folder)));
    const sealed = notes.filter((note) => note.sealed).length;
    const failed = notes.filter(({ findings }) => findings.some(({ severity }) => severity === 'error')).length;
    if (values.format === 'json')
      world.stdout.write(
        `${JSON.stringify({ version: 1, notes, summary: { notes: notes.length, sealed, failed } }, null, 2)}\n`,
      );
    else world.stdout.write(asText(notes, sealed, failed));
    for (const problem of new Set(problems)) world.stderr.write(`${problem}\n`);
    if (problems.length > 0) return 2;
    return failed > 0 ? 1 : 0;
  },
});

function foldersIn(paths: readonly string[], { files, folder }: World): readonly string[] {
  return paths.map((path) => resolve(folder, path)).filter((path) => files.kind(path) === 'folder');
}

function remembering<T>(work: (folder: string) => T): (folder: string) => T {
  const known = new Map<string, T>();
  return (folder) => {
    const found = known.get(folder) ?? work(folder);
    known.set(folder, found);
    return found;
  };
}

function lostFinding(file: string): NoteFindings {
  const message = `The note is not there, and its seals are (${sealPath(file)}): it was sealed and then removed or renamed. Put it back as it was.`;
  return { file, sealed: true, findings: [{ finding: 'seal-note-missing', severity: 'error', message }] };
}

function asText(notes: readonly NoteFindings[], sealed: number, failed: number): string {
  const lines = notes.flatMap(({ file, findings }) =>
    findings.map(({ severity, message }) => `${file}: ${severity === 'info' ? '' : `${severity}: `}${message}`),
  );
  const summary = `${notes.length} ${notes.length === 1 ? 'note' : 'notes'}, ${sealed} sealed, ${failed} ${failed === 1 ? 'seal chain' : 'seal chains'} with errors.`;
  return `${[...lines, summary].join('\n')}\n`;
}
