import type { Operation } from '@sideport/schemas';
import { typedOr } from '../export/written-value.ts';
import type { Entries } from './entries.ts';
import { concept, quantityOf, to } from './fhir.ts';

/** Drugs given during the operation; one without a name or a day of the operation cannot be told in FHIR. */
export function addDrugs(note: Operation, patient: string, entries: Entries): readonly string[] {
  const { date } = note;
  if (!date) return [];
  return (note.drugs?.items ?? []).flatMap((given, index) => {
    if (!given.drug) return [];
    const { mass, volume } = given.dose?.value ?? {};
    const digits = (value: number): string => typedOr(given.dose?.text, value);
    const dose = mass === undefined ? volume && quantityOf(digits(volume), 'mL') : quantityOf(digits(mass), 'mg');
    return entries.add(`drug ${index}`, {
      resourceType: 'MedicationAdministration',
      status: 'completed',
      medicationCodeableConcept: concept(given.drug.value),
      subject: to(patient),
      effectiveDateTime: date.value,
      ...(given.purpose ? { reasonCode: [concept(given.purpose.value)] } : {}),
      // A dosage without an amount is not allowed (mad-1).
      ...(dose
        ? {
            dosage: {
              ...(given.dose ? { text: given.dose.text.trim() } : {}),
              ...(given.route ? { route: concept(given.route.value) } : {}),
              dose,
            },
          }
        : {}),
    });
  });
}
