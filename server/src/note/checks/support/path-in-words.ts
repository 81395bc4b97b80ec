import { planAt, recordPlan, type Path } from '@sideport/schemas';

/** A field as a person calls it: its label, with the section's where the label alone would not be enough. */
export function pathInWords(path: Path): string {
  const root = recordPlan('operation');
  const own = planAt(root, path)?.guide.label;
  const section = path.length > 1 ? planAt(root, path.slice(0, 1))?.guide.label : undefined;
  if (own === undefined) return section ?? path.join(' ');
  return section === undefined || section === own ? own : `${section}, ${own.toLowerCase()}`;
}
