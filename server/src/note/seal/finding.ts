import type { Statement } from './statement.ts';

/** One thing that was found about a seal. */
export interface SealFinding {
  readonly finding:
    | 'seal-holds'
    | 'seal-layout-changed'
    | 'seal-content-changed'
    | 'seal-of-another-note'
    | 'seal-note-missing'
    | 'seal-not-readable'
    | 'seal-signer-not-named'
    | 'seal-key-not-for-seals'
    | 'seal-key-not-valid-then'
    | 'seal-key-revoked'
    | 'seal-chain-broken'
    | 'seal-time-goes-back'
    | 'seal-author-missing'
    | 'seal-author-not-of-note'
    | 'seal-supervisor-missing'
    | 'seal-signer-may-not-sign';
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
}

/** How a seal is named in a finding. */
export const by = ({ predicate }: Statement): string =>
  `The seal of ${predicate.signer} as ${predicate.meaning}, ${predicate.signedAt},`;
