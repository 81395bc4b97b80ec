import type { Observation, ObservationComponent } from 'fhir/r4';
import type { Acuity, Field, Keratometry, Operation, Quantity } from '@sideport/schemas';
import { measurements } from '@sideport/schemas/codes/table.ts';
import { logmar, logmarScheme } from '../export/cell-values.ts';
import { refractionPart } from '../export/tables/eye-values.ts';
import { amountOf } from '../export/written-value.ts';
import type { Entries } from './entries.ts';
import { concept, documentDecimal, eyeConcept, quantityOf, to, type Fhir } from './fhir.ts';

type Sides = { readonly right: string; readonly left: string };

const loincOf = (key: string): Sides | undefined => measurements.codes.find((entry) => entry.key === key);

/** Makes observations of one eye in one document. */
export class Observations {
  readonly #base: Omit<Fhir<Observation>, 'code'>;
  readonly #entries: Entries;
  readonly #side: 'right' | 'left' | undefined;
  /** Those of the eye that the print-out of the biometry names, where it names one. */
  readonly ofBiometry: Observations;

  constructor(note: Operation, patient: string, entries: Entries, side = note.eye?.value) {
    this.#entries = entries;
    this.#side = side;
    const measured = note.preop?.biometry?.eye?.value ?? side;
    this.ofBiometry = measured === side ? this : new Observations(note, patient, entries, measured);
    this.#base = {
      resourceType: 'Observation',
      status: note.status?.value === 'final' ? 'final' : 'preliminary',
      category: [
        concept('exam', [{ system: 'http://terminology.hl7.org/CodeSystem/observation-category', code: 'exam' }]),
      ],
      subject: to(patient),
      ...(this.#side ? { bodySite: eyeConcept(this.#side) } : {}),
    };
  }

  /** @returns the address, or undefined when there is no value */
  amount(
    name: string,
    field: Field<Quantity> | undefined,
    options: {
      readonly loinc?: Sides | undefined;
      readonly date?: string | undefined;
      readonly method?: string | undefined;
    } = {},
  ): string | undefined {
    if (!field) return undefined;
    const unit = field.value.unit;
    const loinc = this.#side && options.loinc?.[this.#side];
    return this.add(name, { valueQuantity: quantityOf(amountOf(field.value), unit) }, { ...options, loinc });
  }

  add(
    name: string,
    value: Partial<Fhir<Observation>>,
    {
      loinc,
      date,
      method,
      key,
    }: {
      readonly loinc?: string | undefined;
      readonly date?: string | undefined;
      readonly method?: string | undefined;
      /** Tells observations of one name apart. */
      readonly key?: string;
    } = {},
  ): string {
    const coding = loinc === undefined ? [] : [{ system: 'http://loinc.org', code: loinc }];
    return this.#entries.add(`observation ${key ?? name}`, {
      ...this.#base,
      code: concept(name, coding),
      ...(date === undefined ? {} : { effectiveDateTime: date }),
      ...(method === undefined ? {} : { method: concept(method) }),
      ...value,
    });
  }
}

/** What was measured before the operation; the addresses of the observations. */
export function addMeasurements(note: Operation, observations: Observations): readonly string[] {
  const { preop } = note;
  const biometry = preop?.biometry;
  const date = biometry?.date?.value;
  const measured = { date, method: biometry?.method && `${biometry.method.value} biometry` };
  const { ofBiometry } = observations;
  const urls = [
    acuity('Uncorrected acuity', preop?.acuity?.uncorrected, observations),
    acuity('Best corrected acuity', preop?.acuity?.corrected, observations),
    acuity('Pinhole acuity', preop?.acuity?.pinhole, observations),
    refraction(note, observations),
    observations.amount('Intraocular pressure', preop?.pressure, { loinc: loincOf('pressure') }),
    ofBiometry.amount('Axial length', biometry?.['axial-length'], { ...measured, loinc: loincOf('axial-length') }),
    keratometry(note, ofBiometry),
    ofBiometry.amount('Anterior chamber depth', biometry?.['chamber-depth'], measured),
    ofBiometry.amount('Lens thickness', biometry?.['lens-thickness'], measured),
    ofBiometry.amount('White to white', biometry?.['white-to-white'], measured),
    ofBiometry.amount('Corneal thickness', biometry?.['corneal-thickness'], {
      ...measured,
      loinc: loincOf('corneal-thickness'),
    }),
    observations.amount('Dilated pupil', preop?.pupil),
    observations.amount('Endothelial count', preop?.['endothelial-count']),
  ];
  return urls.filter((url) => url !== undefined);
}

/** What was measured during the operation. */
export function addOperative(note: Operation, observations: Observations): readonly string[] {
  const date = note.date?.value;
  return [
    observations.amount('Capsulotomy diameter', note.capsulotomy?.diameter, { date }),
    observations.amount('Ultrasound time', note.nucleus?.['ultrasound-time'], { date }),
    observations.amount('Mean ultrasound power', note.nucleus?.['mean-power'], { date }),
    observations.amount('Intraocular pressure at the end of the operation', note.closure?.pressure, { date }),
  ].filter((url) => url !== undefined);
}

/** The acuity as written, and its logMAR: the computed one, with the scheme where only a scheme gives it. */
function acuity(name: string, field: Field<Acuity> | undefined, observations: Observations): string | undefined {
  if (!field) return undefined;
  const [value, scheme] = [logmar(field), logmarScheme(field)];
  const code = concept(scheme === undefined ? 'logMAR' : `logMAR by the scheme ${scheme}`);
  const component =
    value === undefined
      ? {}
      : { component: [{ code, valueQuantity: quantityOf(documentDecimal(Number(value)), 'logMAR') }] };
  return observations.add(name, { valueString: field.text.trim(), ...component });
}

function refraction({ preop }: Operation, observations: Observations): string | undefined {
  const field = preop?.refraction;
  if (!field) return undefined;
  const parts = [
    part('sphere', refractionPart(field, 0), 'D'),
    part('cylinder', refractionPart(field, 1), 'D'),
    part('axis', refractionPart(field, 2), '°'),
  ];
  return observations.add('Refraction', { component: parts.filter((one) => one !== undefined) });
}

function keratometry({ preop }: Operation, observations: Observations): string | undefined {
  const biometry = preop?.biometry;
  const components = [
    ...meridian('K1', biometry?.k1),
    ...meridian('K2', biometry?.k2),
    part('keratometric index', biometry?.index && amountOf(biometry.index.value), ''),
  ].filter((one) => one !== undefined);
  if (components.length === 0) return undefined;
  return observations.add(
    'Keratometry',
    { component: components },
    { date: biometry?.date?.value, method: biometry?.['keratometry-method']?.value },
  );
}

function meridian(
  name: string,
  field: Field<Keratometry> | undefined,
): readonly (Fhir<ObservationComponent> | undefined)[] {
  if (!field) return [];
  const { typed, unit, meridian: axis } = field.value;
  return [
    part(`${name} ${unit === 'D' ? 'power' : 'radius'}`, typed, unit),
    part(`${name} meridian`, axis === null ? undefined : String(axis), '°'),
  ];
}

function part(
  name: string,
  decimal: string | boolean | undefined,
  unit: string,
): Fhir<ObservationComponent> | undefined {
  return typeof decimal === 'string' ? { code: concept(name), valueQuantity: quantityOf(decimal, unit) } : undefined;
}
