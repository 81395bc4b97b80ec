import type { FhirResource } from 'fhir/r4';
import type { Fhir } from './fhir.ts';

export interface Entry {
  readonly fullUrl: string;
  readonly resource: Fhir<FhirResource>;
}

/** Collects the resources of one document and gives each an address that depends on nothing but the note. */
export class Entries {
  readonly #made: Entry[] = [];
  readonly #seed: string;
  readonly #hash: (text: string) => string;

  /**
   * @param seed names the content of the document; equal notes make equal documents
   * @param hash SHA-256 of a text in hexadecimal
   */
  constructor(seed: string, hash: (text: string) => string) {
    this.#seed = seed;
    this.#hash = hash;
  }

  /** The address that the resource of a name has, whether it was added already or not. */
  url(name: string): string {
    const digits = this.#hash(`${this.#seed}\n${name}`);
    // RFC 9562, version 8: custom content in the form of a UUID.
    const parts = [
      digits.slice(0, 8),
      digits.slice(8, 12),
      `8${digits.slice(13, 16)}`,
      `a${digits.slice(17, 20)}`,
      digits.slice(20, 32),
    ];
    return `urn:uuid:${parts.join('-')}`;
  }

  add(name: string, resource: Fhir<FhirResource>): string {
    const fullUrl = this.url(name);
    this.#made.push({ fullUrl, resource });
    return fullUrl;
  }

  get list(): readonly Entry[] {
    return this.#made;
  }
}
