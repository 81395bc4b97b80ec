import type { Device } from 'fhir/r4';
import type { Operation } from '@sideport/schemas';
import { amountOf } from '../export/written-value.ts';
import { gs1Bracketed } from '../label/gs1.ts';
import { readLabel } from '../label/label.ts';
import { labelValue } from '../label/reading.ts';
import type { Entries } from './entries.ts';
import { concept, quantityOf, to, type Fhir } from './fhir.ts';

const ISSUERS = {
  gs1: 'http://hl7.org/fhir/NamingSystem/gs1-di',
  hibc: 'http://hl7.org/fhir/NamingSystem/hibcc-dI',
} as const;

/** The implanted lens and ring, as devices of the patient; the addresses of those that were implanted. */
export function addDevices(note: Operation, patient: string, entries: Entries): readonly string[] {
  const { lens, ring } = note;
  const added: string[] = [];
  if (lens && lens.placed?.value !== 'none' && (lens.placed ?? lens.power ?? lens.model)) {
    added.push(entries.add('lens', lensDevice(note, lens, patient)));
  }
  if (ring?.used?.value) {
    added.push(
      entries.add('ring', {
        resourceType: 'Device',
        status: 'active',
        type: concept(ring.kind?.value ?? 'tension ring'),
        ...(ring.serial ? { serialNumber: ring.serial.value } : {}),
        ...property('diameter when free', ring.size?.value.free, ring.size?.text, 'mm'),
        patient: to(patient),
      }),
    );
  }
  return added;
}

function lensDevice(note: Operation, lens: NonNullable<Operation['lens']>, patient: string): Fhir<Device> {
  const properties = [
    lens.power && { type: concept('spherical power'), valueQuantity: [quantityOf(amountOf(lens.power.value), 'D')] },
    lens.cylinder && {
      type: concept('cylinder power'),
      valueQuantity: [quantityOf(amountOf(lens.cylinder.value), 'D')],
    },
    lens['optic-diameter'] && {
      type: concept('optic diameter'),
      valueQuantity: [quantityOf(amountOf(lens['optic-diameter'].value), 'mm')],
    },
    lens.material && { type: concept('material'), valueCode: [concept(lens.material.value)] },
    lens.kind && { type: concept('kind'), valueCode: [concept(lens.kind.value)] },
  ].filter((one) => one !== undefined);
  return {
    resourceType: 'Device',
    ...udiCarrier(lens.udi?.value, Number((note.date?.value ?? '').slice(0, 4))),
    status: 'active',
    ...(lens.maker ? { manufacturer: lens.maker.value } : {}),
    ...(lens.expiry ? { expirationDate: lens.expiry.value } : {}),
    ...(lens.lot ? { lotNumber: lens.lot.value } : {}),
    ...(lens.serial ? { serialNumber: lens.serial.value } : {}),
    ...(lens.model ? { modelNumber: lens.model.value } : {}),
    type: concept('intraocular lens'),
    ...(properties.length > 0 ? { property: properties } : {}),
    patient: to(patient),
  };
}

/** The scanned identifier; a label that could not be read still leaves in its human-readable form. */
function udiCarrier(udi: string | undefined, year: number): Pick<Fhir<Device>, 'udiCarrier'> {
  if (udi === undefined) return {};
  const reading = readLabel(udi, Number.isNaN(year) ? 2000 : year);
  const deviceIdentifier = labelValue(reading, 'device-identifier');
  const readable =
    reading.standard === 'gs1' && reading.faults.length === 0 ? gs1Bracketed(reading.parts) : printable(udi);
  return {
    udiCarrier: [
      {
        ...(deviceIdentifier === undefined ? {} : { deviceIdentifier }),
        ...(reading.standard === 'unknown' ? {} : { issuer: ISSUERS[reading.standard] }),
        carrierHRF: readable,
        entryType: reading.form === 'bracketed' ? 'manual' : 'barcode',
      },
    ],
  };
}

/** A FHIR string holds no control character but tab and line ends. */
function printable(text: string): string {
  return Array.from(text, (character) => ((character.codePointAt(0) ?? 0) < 32 ? '\u241d' : character)).join('');
}

function property(
  name: string,
  value: number | undefined,
  text: string | undefined,
  unit: string,
): Pick<Fhir<Device>, 'property'> {
  if (value === undefined) return {};
  const typed = text?.match(/\d+(?:\.\d+)?/gu)?.find((digits) => Number(digits) === value) ?? String(value);
  return { property: [{ type: concept(name), valueQuantity: [quantityOf(typed, unit)] }] };
}
