import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import {
  comparedLenses,
  lowAndHighMetres,
  type MadeSchemes,
  makeLensSchemes,
  makeLowAndHighSchemes,
} from '../state/edits/compare-edits.ts';
import { maxSchemes } from '../state/edits/frame-edits.ts';
import { useSession } from '../state/session.ts';
import { Drop } from '../ui/Drop.tsx';
import { worded } from '../ui/lengths.ts';

/** Schemes made of the present one, each with a camera of its own. They take the place of the tiles. */
export const MakeSchemes = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const { edit, chooseScheme, tell } = useApp.getState();
  const { set } = useSession.getState();
  const show = (made: MadeSchemes, beside: readonly string[]) => {
    const [first] = made.schemeIds;
    if (first === undefined) {
      tell({
        tone: 'problem',
        text: `Nothing was made: there is no place for such a camera, or no room in the ${maxSchemes} schemes.`,
      });
      return;
    }
    edit(() => made.setup);
    set({ comparedIds: [...beside, ...made.schemeIds], pair: null });
    chooseScheme(first);
  };
  return (
    <Drop label="Make" closesOnPress>
      <button type="button" onClick={() => show(makeLensSchemes(setup, scheme.id), [])}>
        Lenses {comparedLenses.join(' · ')} mm
      </button>
      <p className="quiet">Three copies of {scheme.name}; the camera steps back, the subject stays the same size.</p>
      <button type="button" onClick={() => show(makeLowAndHighSchemes(setup, scheme.id), [scheme.id])}>
        Low and high camera
      </button>
      <p className="quiet">
        Two copies of {scheme.name}, from {worded(`${lowAndHighMetres.join(' m and ')} m`)}, looking at the same place.
      </p>
    </Drop>
  );
};
