import { version } from '../../../package.json';
import { reviewReading } from '../../note/review.ts';
import { sealNote, unsealable } from '../../note/seal/seal-note.ts';
import { NAMESPACE, sameKey, sshKey, type Signer } from '../../note/seal/signers.ts';
import { sshSignature } from '../../note/seal/ssh-signature.ts';
import type { Register } from '../../note/seal/verify-seals.ts';
import type { Signing } from '../../note/seal/primitives.ts';
import { defineCommand } from '../command.ts';
import { chainOf, rootId } from '../sealing/chain.ts';
import { readSigningKey, sha512 } from '../sealing/keys.ts';
import { withOffset } from '../sealing/local-time.ts';
import { mustHold } from '../sealing/must-hold.ts';
import { noteOnDisk, type NoteOnDisk } from '../sealing/note-on-disk.ts';
import { readRegister, REGISTER_FILE } from '../sealing/register.ts';
import { readSeals, sealPath, writeSeals } from '../sealing/seal-files.ts';
import { writeOutput } from '../write-output.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

export const seal = defineCommand({
  operands: 'PATH',
  about:
    'Signs a final note: writes PATH.seal.json beside it, and touches nothing else. Another signer adds a seal of their\n' +
    'own. Any later change shows in sideport verify. Tamper-evident, not tamper-proof, and no qualified signature.',
  options: {
    key: {
      kind: 'text',
      value: 'FILE',
      about: 'the private key of the signer (Ed25519, PEM), kept apart from the notes',
    },
    signer: { kind: 'text', value: 'REF', about: 'the staff reference of the signer' },
    meaning: {
      kind: 'choice',
      value: 'MEANING',
      choices: ['author', 'supervisor', 'verifier'],
      fallback: 'author',
      about: 'in which meaning it is signed',
    },
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: ['dsse', 'sshsig'],
      fallback: 'dsse',
      about: 'sshsig adds PATH.sig, which ssh-keygen -Y verify reads',
    },
    namespace: { kind: 'text', value: 'NAME', about: `the namespace of sshsig (usual: ${NAMESPACE})` },
    register: {
      kind: 'text',
      value: 'FILE',
      about: `the register of signers (usual: ${REGISTER_FILE} beside the department file)`,
    },
    'show-public': { kind: 'flag', about: 'prints the line for the register and signs nothing' },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file' },
  },
  run: async ({ values, paths }, world) => {
    const { key: keyFile, signer } = values;
    if (keyFile === undefined || signer === undefined)
      throw new WrongUse('Say who signs and with which key: --signer REF --key FILE.');
    if (values['show-public']) {
      const { publicKey } = readSigningKey(keyFile, world.folder, world);
      world.stdout.write(`${registerLine(signer, publicKey)}\n`);
      return 0;
    }
    const note = await noteOnDisk(paths, { name: 'seal', doing: 'sealing' }, values.department, world);
    const bytes = world.files.bytes(note.path);
    const refusal = unsealable({ reading: note.reading, bytes });
    if (refusal !== undefined) throw new FileProblem(`${note.file} was not sealed: ${refusal}.`);
    const errors = reviewReading(note.reading, note.around).remarks.filter(
      ({ severity }) => severity === 'error',
    ).length;
    if (errors > 0) {
      world.stderr.write(
        `${note.file} was not sealed: ${errors} ${errors === 1 ? 'remark is an error' : 'remarks are errors'}. sideport check ${note.file} says which.\n`,
      );
      return 1;
    }
    const signing = readSigningKey(keyFile, note.setFolder, world);
    const register = readRegister(values.register, note.setFolder, world);
    mustBeRegistered(signer, signing, register?.signers);
    const seals = readSeals(note.path, world.files);
    const previous = seals.at(-1) ?? beforeAmendment(note, world);
    const added = sealNote(
      {
        reading: note.reading,
        bytes,
        signer,
        meaning: values.meaning,
        signedAt: withOffset(world.now()),
        program: `Sideport ${version}`,
        previous,
      },
      signing,
    );
    const open = mustHold(
      { ...note, bytes, seals, added, previous: seals.length === 0 ? previous : undefined, meaning: values.meaning },
      { register: register ?? ownRegister(signer, signing), department: note.around.department ?? null },
    );
    writeSeals(note.file, [...seals, added], world);
    world.stdout.write(`${note.file} is sealed by ${signer} as ${values.meaning}: ${sealPath(note.file)}\n`);
    for (const finding of open) world.stderr.write(`${finding}\n`);
    if (values.format === 'sshsig') {
      writeOutput(sshSignature(sha512(bytes), values.namespace ?? NAMESPACE, signing), `${note.file}.sig`, world);
      world.stdout.write(`OpenSSH reads ${note.file}.sig\n`);
    }
    return 0;
  },
});

/** The last seal of what an amendment amends: a chain has no gaps. */
function beforeAmendment({ reading, file, around }: NoteOnDisk, world: World) {
  if (reading.kind !== 'amendment') return undefined;
  const id = rootId(reading);
  const links = id === undefined ? [] : chainOf(id, around.set, world).filter((link) => link.file !== file);
  const last = links.findLast(({ seals }) => seals.length > 0)?.seals.at(-1);
  if (last === undefined)
    throw new FileProblem(
      `${file} was not sealed: the note it amends (${id ?? 'not named'}) has no seal. Seal that note first, or change it itself.`,
    );
  return last;
}

const registerLine = (signer: string, publicKey: Uint8Array): string =>
  `${signer} namespaces="${NAMESPACE}" ssh-ed25519 ${sshKey(publicKey)}`;

/** A key that the register does not list is told with the line that it lacks. */
function mustBeRegistered(signer: string, { publicKey }: Signing, signers: readonly Signer[] | undefined): void {
  if (signers === undefined) return;
  if (signers.some((one) => sameKey(one.key, publicKey) && one.names.includes(signer))) return;
  throw new WrongUse(
    `The register of signers does not list this key for ${signer}. Its line would be:\n${registerLine(signer, publicKey)}`,
  );
}

/** Where there is no register yet, a signer is taken for who they say they are. */
const ownRegister = (signer: string, { publicKey }: Signing): Register => ({
  signers: [{ names: [signer], key: publicKey, forSeals: true }],
  revoked: [],
});
