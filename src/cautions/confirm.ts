import type { Place } from '../diagnostics/index.js';
import type { Pulled, Reason } from './facts.js';
import type { Basis } from './register.js';

/** One caution as the review sheet shows it. */
export interface ReviewRow {
  readonly id: string;
  readonly title: string;
  readonly severity: string;
  readonly who: string;
  readonly why: string;
  readonly checks: readonly string[];
  readonly reasons: readonly Reason[];
  readonly basis: readonly Basis[];
  /** Who must still agree to what. */
  readonly confirm: string;
  /** `unconfirmed`, or role and day. */
  readonly status: string;
  readonly at: Place;
}

/** Every pulled caution with what it rests on and who has confirmed it. */
export function reviewRows(pulled: readonly Pulled[]): readonly ReviewRow[] {
  return pulled.map(({ caution, reasons }) => ({
    id: caution.id,
    title: caution.title,
    severity: caution.severity,
    who: caution.who,
    why: caution.why,
    checks: caution.checks,
    reasons,
    basis: caution.basis,
    confirm: caution.confirm,
    status: caution.confirmed ? `${caution.confirmed.role}, ${caution.confirmed.date}` : 'unconfirmed',
    at: caution.at,
  }));
}

/** Triggers of the register that nothing evaluates yet, with what each waits for. */
export function waiting(register: {
  readonly cautions: readonly {
    readonly id: string;
    readonly facts: readonly { readonly number: number; readonly says: string; readonly waits?: string }[];
  }[];
}): readonly { readonly trigger: string; readonly says: string; readonly waits: string }[] {
  return register.cautions.flatMap((c) =>
    c.facts.flatMap((f) =>
      f.waits === undefined ? [] : [{ trigger: `${c.id}#${f.number}`, says: f.says, waits: f.waits }],
    ),
  );
}
