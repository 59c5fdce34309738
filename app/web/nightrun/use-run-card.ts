import { useMemo, useState } from 'react';
import { cardData } from '../../../core/card/card-data.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import { useScheme, useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';

/** The card of the present scheme, as it was when it was first asked for: the plan does not change in the field. */
export const useRunCard = (): FieldCard | null => {
  const setup = useSetup();
  const scheme = useScheme();
  const report = useReport();
  const [first, setFirst] = useState<{ readonly setupId: string; readonly report: SchemeReport } | null>(null);
  const isOfThis = first?.setupId === setup.id && first.report.id === scheme.id;
  if (report?.id === scheme.id && !isOfThis) setFirst({ setupId: setup.id, report });
  const used = isOfThis ? first.report : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: nights that are noted change the setup, not the card
  return useMemo(() => (used ? cardData(setup, scheme, used) : null), [used]);
};
