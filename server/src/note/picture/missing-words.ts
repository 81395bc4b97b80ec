import { isRingThere } from './capsule-words.ts';
import type { Absent, Scene } from './scene.ts';
import { incisionName } from './words.ts';

/** What the picture cannot show because the note does not say it, one sentence part each. */
export function missingWords(scene: Scene): readonly string[] {
  const missing: string[] = [];
  const say = (is: boolean, words: string) => {
    if (is) missing.push(words);
  };
  say(scene.eye === undefined, 'which eye: nasal and temporal are not written');
  say(scene.seat === undefined, "the surgeon's seat: drawn as a person facing the eye sees it");
  say(scene.limbus === undefined, 'white-to-white: the limbus is drawn at 12.0 mm');
  say(scene.incisions === undefined, 'incisions');
  say(scene.steepMeridian === undefined, 'steep corneal meridian');
  const isAbsent = (part: Absent['part']) => scene.absent?.some((one) => one.part === part) === true;
  say(scene.capsulotomy === undefined && !isAbsent('capsulotomy'), 'capsulotomy');
  say(scene.capsulotomy !== undefined && scene.capsulotomy.diameter === undefined, 'diameter of the capsulotomy');
  say(
    scene.capsulotomy !== undefined && typeof scene.capsulotomy.offset?.distance !== 'number',
    'centration of the capsulotomy',
  );
  say(scene.zonule === undefined, 'state of the zonule');
  say(scene.optic === undefined && !isAbsent('optic'), 'lens optic');
  say(scene.optic !== undefined && scene.optic.diameter === undefined, 'diameter of the optic');
  say(scene.ring === undefined, 'whether a capsular tension ring was used');
  say(isRingThere(scene.ring) && scene.ring?.diameter === undefined, 'size of the capsular tension ring');
  say(scene.aimedAxis !== undefined && scene.foundAxis === undefined, 'axis where the toric lens was found');
  say(scene.aimedAxis === undefined && scene.foundAxis !== undefined, 'axis at which the toric lens was aimed');
  for (const incision of scene.incisions ?? []) {
    say(incision.position === undefined, `place of the ${incisionName(incision).toLowerCase()}`);
    say(incision.width === undefined, `width of the ${incisionName(incision).toLowerCase()}`);
  }
  return missing;
}
