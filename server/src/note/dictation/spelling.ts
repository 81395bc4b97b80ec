/**
 * One spelling for each word, so that the phrase table needs to be written once: British spelling, no apostrophes, no “'s”,
 * no accents, and the forms a recogniser types for the same sound of the same word.
 */

const american: Readonly<Record<string, string>> = {
  center: 'centre',
  centers: 'centres',
  centered: 'centred',
  centering: 'centring',
  decentered: 'decentred',
  decentering: 'decentring',
  millimeter: 'millimetre',
  millimeters: 'millimetres',
  centimeter: 'centimetre',
  centimeters: 'centimetres',
  milliliter: 'millilitre',
  milliliters: 'millilitres',
  microliter: 'microlitre',
  microliters: 'microlitres',
  meter: 'metre',
  meters: 'metres',
  diopter: 'dioptre',
  diopters: 'dioptres',
  diopteres: 'dioptres',
  anesthesia: 'anaesthesia',
  anesthetic: 'anaesthetic',
  anesthetist: 'anaesthetist',
  anesthetized: 'anaesthetised',
  hemorrhage: 'haemorrhage',
  hemorrhages: 'haemorrhages',
  edema: 'oedema',
  labeled: 'labelled',
  stabilized: 'stabilised',
  visualized: 'visualised',
  color: 'colour',
  milligramme: 'milligram',
  milligrammes: 'milligrams',
  capsulorrhexis: 'capsulorhexis',
  capsularhexis: 'capsulorhexis',
  capsularrhexis: 'capsulorhexis',
  rrhexis: 'rhexis',
  lignocaine: 'lidocaine',
  ok: 'okay',
  μm: 'um',
  μg: 'ug',
};

/** The word as the phrase table spells it. */
export function foldWord(word: string): string {
  if (/^[A-Za-z]+$/u.test(word)) {
    const plain = word.toLowerCase();
    return american[plain] ?? plain;
  }
  const plain = word
    .normalize('NFKD')
    .replace(/['’ʼ]s$/iu, '')
    .replace(/[\u0300-\u036f'’ʼ]/gu, '')
    .toLowerCase();
  return american[plain] ?? plain;
}
