import { vocabulary } from '../notation/words.ts';

export const recordKinds = vocabulary('kind of record', [
  ['operation', [], 'One operation on one eye, from plan to closure.'],
  ['follow-up', ['follow up', 'followup'], 'A later visit, pointing to the operation.'],
  ['amendment', [], 'An addendum, correction or late entry to a sealed note.'],
]);

export const statuses = vocabulary('status', [
  ['planned', [], 'The operation has not begun.'],
  ['draft', [], 'Being written.'],
  ['final', [], 'Complete, ready to be signed and sealed.'],
]);

export const sides = vocabulary('side', [
  ['right', ['right eye', 'od', 're', 'r'], 'The right eye.'],
  ['left', ['left eye', 'os', 'le', 'l'], 'The left eye.'],
]);

export const eyeOrder = vocabulary('order of eyes', [
  ['first', ['first eye', '1st', '1st eye'], 'The first eye to have its lens removed.'],
  ['second', ['second eye', '2nd', '2nd eye'], 'The fellow eye was operated before.'],
]);

export const urgencies = vocabulary('urgency', [['elective', ['routine']], 'urgent', 'emergency']);

export const procedures = vocabulary('procedure', [
  [
    'phacoemulsification with lens',
    [
      'phacoemulsification with lens implant',
      'phacoemulsification with lens implantation',
      'phacoemulsification with intraocular lens',
      'phacoemulsification with intraocular lens implantation',
      'phacoemulsification with iol',
      'phacoemulsification with iol implantation',
      'phacoemulsification + iol',
      'phacoemulsification and iol',
      'phaco with lens',
      'phaco with lens implant',
      'phaco with iol',
      'phaco with iol implantation',
      'phaco and iol',
      'phaco + iol',
      'phaco/iol',
      'phaco iol',
      'phaco + pciol',
      'phaco with pciol',
    ],
  ],
  ['phacoemulsification', ['phaco', 'phacoemulsification without lens']],
  [
    'manual small-incision extraction with lens',
    [
      'manual small incision with lens',
      'manual small incision cataract surgery with lens',
      'manual small incision cataract surgery with iol',
      'msics with lens',
      'msics with iol',
      'msics with pciol',
      'msics + iol',
      'msics + pciol',
      'sics with lens',
      'sics with iol',
      'sics with pciol',
      'sics + iol',
      'sics + pciol',
    ],
  ],
  [
    'manual small-incision extraction',
    ['manual small incision cataract surgery', 'msics', 'sics'],
    'Whether a lens was implanted stands with the lens.',
  ],
  [
    'extracapsular extraction with lens',
    [
      'extracapsular with lens',
      'extracapsular cataract extraction with lens',
      'extracapsular cataract extraction with iol',
      'ecce with lens',
      'ecce with iol',
      'ecce with pciol',
      'ecce + iol',
      'ecce + pciol',
    ],
  ],
  [
    'extracapsular extraction',
    ['extracapsular cataract extraction', 'ecce'],
    'Whether a lens was implanted stands with the lens.',
  ],
  ['intracapsular extraction', ['intracapsular cataract extraction', 'icce']],
  ['lens exchange', ['iol exchange', 'exchange of lens', 'exchange of iol']],
  [
    'secondary lens',
    ['secondary lens implant', 'secondary lens implantation', 'secondary iol', 'secondary iol implantation'],
  ],
  ['lens repositioning', ['iol repositioning', 'repositioning of lens', 'repositioning of iol']],
  ['peripheral iridotomy', ['surgical iridotomy', 'iridotomy']],
]);

/** What is done besides the operation on the lens, in one sitting. */
export const extraProcedures = vocabulary('extra procedure', [
  ['trabeculectomy', []],
  ['drainage device', ['glaucoma drainage device', 'tube', 'aqueous shunt']],
  ['angle surgery', ['goniotomy', 'trabecular bypass', 'trabeculotomy', 'goniosynechialysis']],
  ['pars plana vitrectomy', ['ppv', 'vitrectomy through the pars plana']],
  ['removal of silicone oil', ['silicone oil removal', 'oil removal']],
  ['intravitreal injection', []],
  ['corneal graft', ['keratoplasty', 'penetrating keratoplasty', 'endothelial keratoplasty', 'lamellar keratoplasty']],
  ['pterygium excision', []],
  ['synechiolysis', ['division of synechiae', 'synechialysis']],
  ['iris repair', ['pupilloplasty', 'iris suture', 'iridoplasty']],
  ['peripheral iridectomy', ['iridectomy', 'surgical iridectomy']],
  ['posterior capsulotomy on purpose', ['primary posterior capsulotomy', 'posterior capsulorhexis']],
  ['laser-assisted steps', ['femtosecond laser', 'femtosecond-assisted', 'laser-assisted']],
  ['removal of a lens', ['explantation', 'lens explantation', 'iol explantation']],
  ['other', []],
]);

export const sexes = vocabulary('sex', [['female', ['f', 'woman']], ['male', ['m', 'man']], 'other']);

export const staffRoles = vocabulary('role', [
  ['surgeon', ['primary surgeon', 'operating surgeon']],
  ['supervisor', ['supervising surgeon', 'supervising']],
  ['assistant', ['assisting surgeon']],
  ['anaesthetist', ['anesthetist', 'anaesthesiologist', 'anesthesiologist']],
  ['scrub nurse', ['instrument nurse', 'scrub practitioner']],
  ['circulating nurse', ['circulator']],
  ['observer', []],
]);

export const grades = vocabulary('grade', [
  ['consultant', ['attending']],
  ['career grade', ['associate specialist', 'staff grade', 'specialty doctor']],
  ['fellow', []],
  [
    'senior trainee',
    ['trainee', 'registrar', 'resident', 'specialist registrar', 'spr', 'st3', 'st4', 'st5', 'st6', 'st7'],
  ],
  ['junior trainee', ['senior house officer', 'sho', 'st1', 'st2']],
  ['nurse', []],
  ['student', []],
]);
