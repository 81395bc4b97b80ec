import type { Operation } from '@sideport/schemas';
import { and, join, offsetWords, withArticle } from '../english.ts';
import type { Tidy } from '../passage.ts';

type Capsulotomy = NonNullable<Operation['capsulotomy']>;

/** How the anterior capsule was opened, how large, and what became of its edge. */
export function capsulotomyWords({ capsulotomy: made }: Operation, tidy: Tidy): string | undefined {
  if (!made) return undefined;
  const named = withArticle(join([made.technique?.value, 'capsulotomy']));
  const aids = join(
    [
      made.aimed && `aimed at ${tidy(made.aimed)}`,
      made['corneal-marker'] && `under a corneal mark of ${tidy(made['corneal-marker'])}`,
    ],
    ', ',
  );
  const intended = aids === '' ? undefined : `(${aids})`;
  const size = made.diameter && `of ${tidy(made.diameter)}`;
  const outcome = made.outcome?.value;
  const first =
    outcome === 'converted to can-opener'
      ? join([named, 'was begun', intended, 'and converted to a can-opener capsulotomy', size])
      : join([named, size, 'was made', intended]);
  return join([first, and([outcome && OUTCOMES[outcome], centration(made, tidy)])], '; ');
}

/** What is told by the verb already has no clause of its own. */
const OUTCOMES: Readonly<Record<NonNullable<Capsulotomy['outcome']>['value'], string | undefined>> = {
  complete: 'it was complete',
  incomplete: 'it was not complete',
  'extended to the periphery': 'it ran out to the periphery',
  rescued: 'it ran out and was rescued',
  'radial tear': 'its edge tore radially',
  'converted to can-opener': undefined,
};

function centration(made: Capsulotomy, tidy: Tidy): string | undefined {
  const offset = made['off-centre'];
  if (offset === undefined) return undefined;
  return offset.value.distance === 0
    ? 'it was centred on the optic'
    : `its centre lay ${offsetWords(tidy(offset))} of the centre of the optic`;
}
