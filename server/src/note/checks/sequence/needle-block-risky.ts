import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { has } from '../support/course.ts';
import { longLength } from '../support/measurements.ts';
import { related } from '../support/place.ts';

export const needleBlockRisky = operationCheck({
  id: 'needle-block-risky',
  group: 'sequence and consequence',
  summary: 'A needle block is planned or was given in a long eye, or under an anticoagulant.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const given = has(note.anaesthesia?.kinds, 'retrobulbar', 'peribulbar');
    const block =
      given ??
      (note.anaesthesia?.kinds === undefined ? has(note.plan?.anaesthesia, 'retrobulbar', 'peribulbar') : undefined);
    if (block === undefined || note.anaesthesia?.text !== undefined) return;
    const length = longLength(note, context);
    const anticoagulant = note.patient?.anticoagulant;
    const reason =
      length !== undefined
        ? { words: `the eye is ${length.text} long`, place: length }
        : anticoagulant !== undefined
          ? { words: `the patient takes ${anticoagulant.text}`, place: anticoagulant }
          : undefined;
    if (reason === undefined) return;
    say({
      at: block,
      message: `Anaesthesia: a ${block.value} block, although ${reason.words}. Was sub-Tenon or topical anaesthesia considered?`,
      related: [related(reason.words, reason.place)],
    });
  },
});

export const aboutNeedleBlockRisky: About = () => ({
  why: 'A needle perforates a long eye more easily, above all one with a staphyloma, and bleeds behind the eye under an anticoagulant.',
  whatToDo: 'Consider topical or sub-Tenon anaesthesia; if the block was weighed against them, say so in words.',
  source: 'joint guidelines on local anaesthesia for ophthalmic surgery (RCoA and RCOphth 2012; from memory)',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'plan:\n  anaesthesia: [retrobulbar]\nanaesthesia:\n  kinds: [retrobulbar]') },
  sound: { note: longEye },
});
