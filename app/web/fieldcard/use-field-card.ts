import { useEffect, useMemo, useState } from 'react';
import { cardData } from '../../../core/card/card-data.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { type PlanData, planData } from '../../../core/card/plan/plan-data.ts';
import { layOutCard } from '../../../core/card/sheet/lay-out-card.ts';
import type { Page } from '../../../core/card/sheet/shapes.ts';
import type { CardFont } from '../../card/card-font.ts';
import { useScheme, useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { loadCardFont } from './late-files.ts';

/** The card of the scheme on screen, laid out. */
export interface LaidOutCard {
  readonly card: FieldCard;
  readonly plan: PlanData;
  /** Its pages, with boxes for the two pictures or without. */
  readonly layOut: (hasPictures: boolean) => readonly Page[];
  readonly font: CardFont;
}

/** The card's typeface; null until it is there, the reason where it does not come. */
export const useCardFont = (): CardFont | string | null => {
  const [font, setFont] = useState<CardFont | string | null>(null);
  useEffect(() => {
    let isHere = true;
    const tell = (to: CardFont | string) => {
      if (isHere) setFont(to);
    };
    loadCardFont().then(tell, (error: unknown) => tell(error instanceof Error ? error.message : String(error)));
    return () => {
      isHere = false;
    };
  }, []);
  return font;
};

/** The card of the present scheme; null until its readings are there. It trails the setup as they do. */
export const useFieldCard = (font: CardFont | null): LaidOutCard | null => {
  const setup = useSetup();
  const scheme = useScheme();
  const report = useReport();
  return useMemo(() => {
    if (!font || !report) return null;
    const card = cardData(setup, scheme, report);
    const plan = planData(setup, report);
    const { sensor } = scheme.camera ?? setup.camera;
    const aspect = sensor.widthMm / sensor.heightMm;
    const layOut = (hasPictures: boolean) =>
      layOutCard(card, { plan, aspect: hasPictures ? aspect : null, measure: font.measure });
    return { card, plan, layOut, font };
  }, [setup, scheme, report, font]);
};
