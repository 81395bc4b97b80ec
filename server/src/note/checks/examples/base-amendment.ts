/** A sound correction of the routine operation's note. */
export const baseAmendment = `opnote: 1
record: amendment
status: final
id: AM-2031-0102-1
amends: OP-2031-0102
kind: correction
at: 2031-04-09T08:30+01:00
by: S-02
changes:
  - field: antisepsis.contact
    was: 3 min
    now: 5 min
    reason: the theatre log says five minutes
reason: contact time put right from the theatre log
patient:
  ref: P-1042
eye: right
signed:
  - by: S-02
    meaning: author
    at: 2031-04-09T08:34+01:00
`;
