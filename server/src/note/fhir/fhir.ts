import type { CodeableConcept, Quantity as FhirQuantity, Reference } from 'fhir/r4';
import type { Decimal } from '../export/json-text.ts';
import { computedDecimal } from '../export/written-value.ts';

/** A FHIR type whose decimals keep the digits that were written. */
export type Fhir<T> = T extends number
  ? number | Decimal
  : T extends string | boolean | undefined
    ? T
    : { readonly [K in keyof T]: Fhir<T[K]> };

export const UCUM = 'http://unitsofmeasure.org';

/** The units of a note as UCUM codes. Dioptres are [diop]; D, dpt and ° are no UCUM codes, and logMAR has none: 1. */
const UCUM_CODES: Readonly<Record<string, string>> = {
  mm: 'mm',
  cm: 'cm',
  µm: 'um',
  D: '[diop]',
  '°': 'deg',
  mmHg: 'mm[Hg]',
  '%': '%',
  s: 's',
  min: 'min',
  mL: 'mL',
  mg: 'mg',
  'mL/min': 'mL/min',
  '/mm²': '/mm2',
  logMAR: '1',
  years: 'a',
  days: 'd',
  '': '1',
};

export const ucumCode = (unit: string): string | undefined => UCUM_CODES[unit];

/** A quantity with its digits as written; without a UCUM code the unit stands as text only. */
export function quantityOf(decimal: string, unit: string): Fhir<FhirQuantity> {
  const code = ucumCode(unit);
  const named = unit === '' ? {} : { unit };
  return { value: { decimal }, ...named, ...(code === undefined ? {} : { system: UCUM, code }) };
}

/**
 * A computed number in a document: six significant digits, for more would pretend to an exactness that no measurement
 * has.
 */
export const documentDecimal = (value: number): string => computedDecimal(Number(value.toPrecision(6)));

export function concept(text: string, coding: Fhir<CodeableConcept>['coding'] = []): Fhir<CodeableConcept> {
  return coding.length === 0 ? { text } : { coding, text };
}

/** The eye as a body site. The two codes are those of the free set that DICOM uses (CID 244). */
export function eyeConcept(side: 'right' | 'left'): Fhir<CodeableConcept> {
  const code = side === 'right' ? '24028007' : '7771000';
  const display = side === 'right' ? 'Right' : 'Left';
  return concept(`${side} eye`, [{ system: 'http://snomed.info/sct', code, display }]);
}

export const to = (url: string): Fhir<Reference> => ({ reference: url });

/** A date and time with its seconds, which FHIR wants; a date or a year stays as it is. */
export function fhirTime(text: string): string {
  return text.replace(/T(\d{2}:\d{2})(?=Z|[+-])/u, 'T$1:00');
}

/** Whether a text is a moment with its offset, as `instant` wants it. */
export const isInstant = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}.*(?:Z|[+-]\d{2}:\d{2})$/u.test(text);
