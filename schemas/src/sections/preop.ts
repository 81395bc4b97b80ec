import { list, quantity, section, text, value, word } from '../fields/field.ts';
import { acuity } from '../notation/acuity.ts';
import { keratometry } from '../notation/keratometry.ts';
import { refraction } from '../notation/refraction.ts';
import { calendarDate } from '../notation/time.ts';
import {
  biometryMethods,
  fundusViews,
  keratometryMethods,
  maculopathyCategories,
  peripheryFindings,
} from '../vocabulary/findings.ts';
import { sides } from '../vocabulary/head.ts';
import { vocabulary } from '../notation/words.ts';

const practice = 'common practice, no source';

/** Acuities of one visit; shared by the operation and the follow-up. */
export const acuities = section(
  {
    label: 'Acuity',
    meaning: 'Visual acuity in the notation it was measured in.',
    source: 'Mahmud et al., JAMA Ophthalmol 2015;133:1247-52',
    spoken: ['acuity', 'vision'],
  },
  {
    uncorrected: value(acuity, {
      label: 'Uncorrected acuity',
      meaning: 'Without glasses.',
      example: '6/60',
      spoken: ['uncorrected', 'unaided'],
    }),
    corrected: value(acuity, {
      label: 'Best corrected acuity',
      meaning: 'With the best glasses.',
      example: '6/24',
      spoken: ['best corrected', 'corrected'],
    }),
    pinhole: value(acuity, {
      label: 'Pinhole acuity',
      meaning: 'Through a pinhole.',
      example: '6/18',
      spoken: ['pinhole'],
    }),
  },
);

/** Keratometry of one examination: two principal meridians and the index used. */
export const keratometryFields = {
  k1: value(keratometry, {
    label: 'K1',
    meaning: 'The flatter principal meridian: power or radius @ meridian.',
    example: '43.25 D @ 5',
    possible: [30, 60],
    usual: [38, 49],
    limitsSource: practice,
    source: 'IOL quality standard (RCOphth and UKOA 2018)',
    spoken: ['k one', 'flat k'],
  }),
  k2: value(keratometry, {
    label: 'K2',
    meaning: 'The steeper principal meridian: power or radius @ meridian.',
    example: '44.50 D @ 95',
    possible: [30, 60],
    usual: [38, 49],
    limitsSource: practice,
    source: 'IOL quality standard (RCOphth and UKOA 2018)',
    spoken: ['k two', 'steep k'],
  }),
  index: quantity('', {
    label: 'Keratometric index',
    meaning: 'The index that turned radius into power; 1.3375 where none is written.',
    example: '1.3375',
    possible: [1.3, 1.4],
    limitsSource: 'ISO 10343 (from memory)',
  }),
};

const axialLength = quantity('mm', {
  label: 'Axial length',
  meaning: 'The length of the eye.',
  example: '24.10 mm',
  possible: [14, 40],
  usual: [20, 36],
  limitsSource: practice,
  source: 'IOL quality standard (RCOphth and UKOA 2018); DICOM (0022,1019)',
  spoken: ['axial length'],
});

const biometry = section(
  {
    label: 'Biometry',
    meaning: 'The measurement the lens was chosen with.',
    source: 'IOL quality standard (RCOphth and UKOA 2018)',
    spoken: ['biometry'],
  },
  {
    method: word(biometryMethods, {
      label: 'Method',
      meaning: 'How the length was measured.',
      example: 'optical',
      source: 'DICOM CID 4230 for ultrasound',
    }),
    device: text({
      label: 'Device kind',
      meaning: 'The kind of device; its local name is enough.',
      example: 'clinic biometer 2',
    }),
    date: value(calendarDate, {
      label: 'Date of the biometry',
      meaning: 'The day of the measurement.',
      example: '2031-02-20',
    }),
    eye: word(sides, {
      label: 'Side on the print-out',
      meaning: 'The side printed on the biometry sheet.',
      example: 'left',
    }),
    'axial-length': axialLength,
    ...keratometryFields,
    'keratometry-method': word(keratometryMethods, {
      label: 'Keratometry method',
      meaning: 'How the cornea was measured.',
      example: 'automated',
      source: 'DICOM CID 4235',
    }),
    'chamber-depth': quantity('mm', {
      label: 'Anterior chamber depth',
      meaning: 'From the front of the cornea to the front of the lens.',
      example: '3.40 mm',
      possible: [1, 6.5],
      usual: [2, 4.5],
      limitsSource: practice,
      source: 'DICOM (0022,1131)',
      spoken: ['chamber depth', 'anterior chamber depth'],
    }),
    'lens-thickness': quantity('mm', {
      label: 'Lens thickness',
      says: ['not applicable'],
      meaning: 'Thickness of the crystalline lens.',
      example: '4.40 mm',
      possible: [2, 8],
      usual: [3, 6],
      limitsSource: practice,
      source: 'DICOM (0022,1130)',
      spoken: ['lens thickness'],
    }),
    'white-to-white': quantity('mm', {
      label: 'White to white',
      meaning: 'Horizontal corneal diameter.',
      example: '12.1 mm',
      possible: [8, 15],
      usual: [10.5, 13.5],
      limitsSource: practice,
      spoken: ['white to white'],
    }),
    'corneal-thickness': quantity('µm', {
      label: 'Corneal thickness',
      meaning: 'Central thickness of the cornea.',
      example: '545 µm',
      possible: [300, 1000],
      usual: [440, 650],
      limitsSource: practice,
      spoken: ['corneal thickness', 'pachymetry'],
    }),
  },
);

const fundus = section(
  {
    label: 'Fundus',
    meaning: 'What was seen of the retina before the operation.',
    says: ['not done'],
    spoken: ['fundus'],
  },
  {
    view: word(fundusViews, {
      label: 'View',
      meaning: 'How well the fundus was seen.',
      example: 'clear',
      source: 'Narendran et al., Eye 2009;23:31-7 (risk factor)',
    }),
    macula: text({ label: 'Macula', meaning: 'The macula in words.', example: 'flat, tessellated' }),
    periphery: list(
      {
        label: 'Periphery',
        meaning: 'The dilated peripheral retina.',
        says: ['not done'],
        spoken: ['periphery', 'peripheral retina'],
      },
      word(peripheryFindings, { label: 'Finding of the periphery', meaning: 'One finding.', example: 'lattice' }),
    ),
    'myopic-maculopathy': word(maculopathyCategories, {
      label: 'Myopic maculopathy category',
      meaning: 'Category 0 to 4 of the META-PM classification.',
      example: '1',
      source: 'Ohno-Matsui et al., Am J Ophthalmol 2015;159:877-83',
      spoken: ['myopic maculopathy'],
    }),
    staphyloma: word(
      vocabulary('answer', [
        ['absent', ['none', 'no']],
        ['present', ['yes']],
      ]),
      {
        label: 'Posterior staphyloma',
        meaning: 'Whether a posterior staphyloma is present.',
        example: 'present',
        source: 'Ohno-Matsui et al., IOVS 2021;62(5):5',
      },
    ),
  },
);

const fellowEye = section(
  {
    label: 'Fellow eye',
    meaning: 'Measurements of the other eye, to compare with.',
    says: ['not done', 'not applicable'],
  },
  {
    'axial-length': axialLength,
    k1: keratometryFields.k1,
    k2: keratometryFields.k2,
    'lens-power': quantity('D', {
      label: 'Lens power of the fellow eye',
      meaning: 'Power implanted or planned in the other eye.',
      example: '+6.0 D',
      possible: [-25, 50],
    }),
    refraction: value(refraction, {
      label: 'Refraction of the fellow eye',
      meaning: 'Present refraction of the other eye.',
      example: '-3.00 / -0.50 x 10',
    }),
    text: text({
      label: 'Fellow eye in words',
      meaning: 'State of the other eye.',
      example: 'pseudophakic since 2029',
    }),
  },
);

export const preop = section(
  { label: 'Before the operation', meaning: 'Examination and measurements on which the plan rests.' },
  {
    acuity: acuities,
    refraction: value(refraction, {
      label: 'Refraction',
      meaning: 'Spectacle refraction before the operation.',
      example: '-14.25 / -1.50 x 95',
      spoken: ['refraction'],
    }),
    'vertex-distance': quantity('mm', {
      label: 'Vertex distance',
      meaning: 'From the glasses to the cornea; 12 mm where none is written.',
      example: '12 mm',
      possible: [5, 25],
      source: 'DICOM (0022,000F)',
    }),
    pressure: quantity('mmHg', {
      label: 'Intraocular pressure',
      meaning: 'Pressure before the operation.',
      example: '15 mmHg',
      possible: [0, 90],
      usual: [6, 30],
      limitsSource: practice,
      source: 'DICOM (0022,000B)',
      spoken: ['pressure'],
    }),
    biometry,
    pupil: quantity('mm', {
      label: 'Dilated pupil',
      meaning: 'Diameter of the dilated pupil.',
      example: '7.0 mm',
      possible: [1, 10],
      usual: [4, 9],
      limitsSource: practice,
      spoken: ['pupil'],
    }),
    'endothelial-count': quantity('/mm²', {
      label: 'Endothelial count',
      meaning: 'Endothelial cells per square millimetre.',
      example: '2400 /mm²',
      possible: [100, 5000],
      usual: [1000, 3500],
      limitsSource: practice,
    }),
    fundus,
    'fellow-eye': fellowEye,
    counselling: list(
      {
        label: 'Counselling given',
        meaning: 'What the patient was told before agreeing.',
        says: ['none'],
        source: practice,
      },
      text({
        label: 'Subject',
        meaning: 'One subject of the talk.',
        example: 'lifelong risk of retinal detachment in a long eye',
      }),
    ),
  },
);
