import type { CodeableConcept, Device } from 'fhir/r4';
import type { Operation } from '@sideport/schemas';
import { amountOf, typedOr } from '../export/written-value.ts';
import { gs1Bracketed } from '../label/gs1.ts';
import { readLabel } from '../label/label.ts';
import { labelValue, type LabelReading } from '../label/reading.ts';
import type { Entries } from './entries.ts';
import { concept, quantityOf, to, type Fhir } from './fhir.ts';

const ISSUERS = {
  gs1: 'http://hl7.org/fhir/NamingSystem/gs1-di',
  hibc: 'http://hl7.org/fhir/NamingSystem/hibcc-dI',
} as const;

/** A device and what was done with it. */
export interface DeviceUse {
  readonly url: string;
  readonly action: Fhir<CodeableConcept>;
}

const ACTIONS = 'http://hl7.org/fhir/device-action';
const action = (code: 'implanted' | 'explanted' | 'manipulated'): Fhir<CodeableConcept> =>
  concept(code, [{ system: ACTIONS, code }]);

/** Lenses and ring with what was done with each; nothing was done yet where the operation is only planned. */
export function addDevices(note: Operation, patient: string, entries: Entries): readonly DeviceUse[] {
  if (note.status?.value === 'planned') return [];
  return [...lensUses(note, patient, entries), ...ringUses(note, patient, entries)];
}

function lensUses(note: Operation, patient: string, entries: Entries): readonly DeviceUse[] {
  const { lens, procedure } = note;
  const moved = procedure?.value === 'lens repositioning';
  const abandoned = note.complications?.items.some((one) => one.what?.value === 'abandoned') ?? false;
  const isThere = lens && lens.placed?.value !== 'none' && (lens.placed ?? lens.power ?? lens.model);
  const used: DeviceUse[] = [];
  if (isThere || (moved && lens?.placed?.value !== 'none')) {
    const url = entries.add('lens', lensDevice(note, lens, patient));
    used.push({ url, action: action(moved ? 'manipulated' : 'implanted') });
  }
  // The lens that was taken out is known by this alone: the fields tell of the new one.
  if (procedure?.value === 'lens exchange' && !abandoned) {
    const url = entries.add('lens taken out', {
      resourceType: 'Device',
      status: 'inactive',
      type: concept('intraocular lens implanted earlier'),
    });
    used.push({ url, action: action('explanted') });
  }
  return used;
}

function ringUses({ ring }: Operation, patient: string, entries: Entries): readonly DeviceUse[] {
  if (!ring?.used?.value) return [];
  const result = ring.result?.value;
  const [removed, lost] = [result === 'removed again', result === 'ring lost'];
  const url = entries.add('ring', {
    resourceType: 'Device',
    status: removed ? 'inactive' : lost ? 'unknown' : 'active',
    type: concept(ring.kind?.value ?? 'tension ring'),
    ...(ring.serial ? { serialNumber: ring.serial.value } : {}),
    ...property('diameter when free', ring.size?.value.free, ring.size?.text, 'mm'),
    ...(removed || lost ? {} : { patient: to(patient) }),
  });
  // FHIR has no word for a ring that was lost; the note's own must do.
  return [{ url, action: lost ? concept('ring lost') : action(removed ? 'explanted' : 'implanted') }];
}

function lensDevice(note: Operation, lens: Operation['lens'], patient: string): Fhir<Device> {
  const properties = [
    lens?.power && { type: concept('spherical power'), valueQuantity: [quantityOf(amountOf(lens.power.value), 'D')] },
    lens?.cylinder && {
      type: concept('cylinder power'),
      valueQuantity: [quantityOf(amountOf(lens.cylinder.value), 'D')],
    },
    lens?.['optic-diameter'] && {
      type: concept('optic diameter'),
      valueQuantity: [quantityOf(amountOf(lens['optic-diameter'].value), 'mm')],
    },
    lens?.material && { type: concept('material'), valueCode: [concept(lens.material.value)] },
    lens?.kind && { type: concept('kind'), valueCode: [concept(lens.kind.value)] },
  ].filter((one) => one !== undefined);
  return {
    resourceType: 'Device',
    ...udiCarrier(lens?.udi?.value, Number((note.date?.value ?? '').slice(0, 4))),
    status: 'active',
    ...(lens?.maker ? { manufacturer: lens.maker.value } : {}),
    ...(lens?.expiry ? { expirationDate: lens.expiry.value } : {}),
    ...(lens?.lot ? { lotNumber: lens.lot.value } : {}),
    ...(lens?.serial ? { serialNumber: lens.serial.value } : {}),
    ...(lens?.model ? { modelNumber: lens.model.value } : {}),
    type: concept('intraocular lens'),
    ...(properties.length > 0 ? { property: properties } : {}),
    patient: to(patient),
  };
}

/**
 * The scanned identifier in its human-readable form. From a label with a fault no device identifier is asserted: a digit
 * may be misread.
 */
function udiCarrier(udi: string | undefined, year: number): Pick<Fhir<Device>, 'udiCarrier'> {
  if (udi === undefined) return {};
  const reading = readLabel(udi, Number.isNaN(year) ? 2000 : year);
  const sound = !reading.faults.some(({ severity }) => severity === 'error');
  const deviceIdentifier = sound ? labelValue(reading, 'device-identifier') : undefined;
  return {
    udiCarrier: [
      {
        ...(deviceIdentifier === undefined || reading.standard === 'unknown'
          ? {}
          : { deviceIdentifier, issuer: ISSUERS[reading.standard] }),
        carrierHRF: sound && reading.standard === 'gs1' ? gs1Bracketed(reading.parts) : udi,
        entryType: entryType(reading),
      },
    ],
  };
}

function entryType({ standard, form }: LabelReading): 'manual' | 'barcode' | 'unknown' {
  if (standard === 'unknown') return 'unknown';
  return form === 'bracketed' ? 'manual' : 'barcode';
}

function property(
  name: string,
  value: number | undefined,
  text: string | undefined,
  unit: string,
): Pick<Fhir<Device>, 'property'> {
  if (value === undefined) return {};
  return { property: [{ type: concept(name), valueQuantity: [quantityOf(typedOr(text, value), unit)] }] };
}
