import type { FollowUpFacts, OperationFacts } from '../../server/src/note/audit/facts.ts';

/** An invented operation and its visit, for tests that need facts without notes. */
export const OPERATION: OperationFacts = {
  record: 'operation',
  id: 'OP-1',
  status: 'final',
  date: '2024-03-14',
  surgeon: 'S-1',
  patient: 'P-1',
  eye: 'right',
  ageYears: 70,
  sex: 'female',
  whichEye: 'first',
  axialLengthMm: 23.5,
  chamberDepthMm: 3.1,
  meanKeratometryD: 43.5,
  comorbidity: [],
  difficulty: [],
  complications: [],
  naturalLens: true,
  rupture: false,
  ruptureRisk: 0.01,
  lens: { model: 'HX-1', powerD: 21, placed: 'capsular bag' },
  predictedD: -0.3,
  predictedBy: 'SRK/T',
  incision: { site: 'superior', meridian: 90, widthMm: 2.8 },
  corneaBefore: { magnitude: 1.5, axis: 90 },
  acuityBefore: null,
  reviews: [],
  elements: [],
};
export const VISIT: FollowUpFacts = {
  record: 'follow-up',
  id: 'FU-1',
  operation: 'OP-1',
  date: '2024-04-14',
  refractionD: -1,
  cornea: { magnitude: 0.75, axis: 90 },
  acuity: null,
  complications: [],
};

export function operation(over: Partial<OperationFacts>): OperationFacts {
  return { ...OPERATION, ...over };
}
