import { createHash, createPrivateKey, sign } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { checking } from '../../server/src/command-line/sealing/keys.ts';
import { preAuthentication } from '../../server/src/note/seal/envelope.ts';
import { utf8 } from '../../server/src/note/seal/primitives.ts';
import { fingerprint, readSigners, sshKey } from '../../server/src/note/seal/signers.ts';

const hex = (text: string) => Uint8Array.from(Buffer.from(text, 'hex'));

// RFC 8032, section 7.1: TEST 1, TEST 2 and TEST 3.
const VECTORS = [
  {
    secret: '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
    public: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    message: '',
    signature:
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  },
  {
    secret: '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
    public: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    message: '72',
    signature:
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  },
  {
    secret: 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7',
    public: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
    message: 'af82',
    signature:
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
  },
];

describe('Ed25519', () => {
  test.each(VECTORS)(
    'the signature of $message is made and held',
    ({ secret, public: publicKey, message, signature }) => {
      const pkcs8 = Buffer.concat([Buffer.from('302e020100300506032b657004220420', 'hex'), Buffer.from(secret, 'hex')]);
      const key = createPrivateKey({ key: pkcs8, format: 'der', type: 'pkcs8' });
      expect(sign(null, hex(message), key).toString('hex')).toBe(signature);
      expect(checking.isSignature(hex(signature), hex(message), hex(publicKey))).toBe(true);
      expect(checking.isSignature(hex(signature), hex(`${message}00`), hex(publicKey))).toBe(false);
    },
  );
});

// DSSE protocol 1.0.2: the example of its pre-authentication encoding.
test('what a DSSE signature is made over', () => {
  const bytes = preAuthentication('http://example.com/HelloWorld', utf8('hello world'));
  expect(new TextDecoder().decode(bytes)).toBe('DSSEv1 29 http://example.com/HelloWorld 11 hello world');
});

// NIST FIPS 180-4 examples.
test('SHA-256 of abc', () =>
  expect(checking.sha256(utf8('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'));

describe('keys as OpenSSH writes them', () => {
  const key = hex(VECTORS[0]?.public ?? '');
  test('type and key, each with its length (RFC 8709, section 4)', () => {
    const blob = Buffer.from(sshKey(key), 'base64');
    expect(blob.readUInt32BE(0)).toBe(11);
    expect(blob.subarray(4, 15).toString()).toBe('ssh-ed25519');
    expect(blob.readUInt32BE(15)).toBe(32);
    expect(blob.subarray(19).toString('hex')).toBe(VECTORS[0]?.public);
  });
  test('the fingerprint is the digest of the blob', () => {
    const digest = createHash('sha256')
      .update(Buffer.from(sshKey(key), 'base64'))
      .digest('base64')
      .replace(/=+$/u, '');
    expect(fingerprint(key, checking)).toBe(`SHA256:${digest}`);
  });
  test('a register is read line by line', () => {
    const { signers, unread } = readSigners(
      [
        '# comment',
        '',
        `S-02,S-03 namespaces="opnote-seal",valid-after="20310101",valid-before="20320101Z" ssh-ed25519 ${sshKey(key)} who`,
        'S-04 ssh-rsa AAAA',
        `S-05 ssh-ed25519 ${sshKey(key)}`,
      ].join('\n'),
    );
    expect(signers.map(({ names, validAfter, validBefore }) => [names, validAfter, validBefore])).toEqual([
      [['S-02', 'S-03'], Date.parse('2031-01-01T00:00:00Z'), Date.parse('2032-01-01T00:00:00Z')],
      [['S-05'], undefined, undefined],
    ]);
    expect(unread).toEqual([4]);
  });
});
