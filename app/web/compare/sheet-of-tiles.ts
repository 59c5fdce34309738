import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { maxSamples } from '../picture/samples.ts';
import { compareSheet } from '../sheets/compare-sheet.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { useApp } from '../state/app-store.ts';
import { comparedSchemes } from '../state/compared-schemes.ts';
import { frameIdsShown } from '../state/frames-shown.ts';
import { useReports } from '../state/reports.ts';
import { useSession } from '../state/session.ts';
import { cautionWords } from '../ui/CautionMark.tsx';
import { tileWords } from './tile-rows.ts';

const cautionsOf = (report: SchemeReport): string[] => [
  ...new Set(report.cautions.map(({ code }) => cautionWords[code] ?? code)),
];

/** The tiles as they are on the page now, as a sheet to be saved or printed. */
export const sheetOfTiles = (): Sheet => {
  const { history, schemeId, frameId, showsBlend } = useApp.getState();
  const { comparedIds, showsUnlit, marks } = useSession.getState();
  const { byScheme } = useReports.getState();
  const setup = history.present;
  const schemes = comparedSchemes(setup, comparedIds);
  const present = setup.schemes.find(({ id }) => id === schemeId) ?? (setup.schemes[0] as Scheme);
  const frame = showsBlend ? null : (present.frames.find(({ id }) => id === frameId) ?? present.frames.at(-1) ?? null);
  const base = schemes.find(({ id }) => id === present.id) ?? (schemes[0] as Scheme);
  const tiles = schemes.map((scheme) => {
    const report = byScheme[scheme.id];
    return {
      scheme,
      isUnlit: false,
      words: report ? tileWords(setup, scheme, report, frameIdsShown(scheme, frame)) : null,
      cautions: report ? cautionsOf(report) : [],
    };
  });
  const unlit = showsUnlit ? [{ scheme: base, isUnlit: true, words: null, cautions: [] }] : [];
  return compareSheet({ setup, tiles: [...tiles, ...unlit], frame, marks, samples: maxSamples });
};
