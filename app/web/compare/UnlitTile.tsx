import { Screen } from '../picture/Screen.tsx';
import type { OnScreenSize } from '../picture/use-screen-sizes.ts';
import { unlitId } from '../state/compared-schemes.ts';

interface UnlitTileProps {
  readonly aspect: number;
  /** Whose camera and exposure it has, where those differ among the tiles. */
  readonly of: string | null;
  readonly onSize: OnScreenSize;
}

/** The picture without lamps. */
export const UnlitTile = ({ aspect, of, onSize }: UnlitTileProps) => (
  <article className="tile tile-unlit" aria-label="Unlit">
    <header className="tile-head">
      <span className="tile-name">Unlit</span>
    </header>
    <div className="tile-picture" style={{ aspectRatio: aspect }}>
      <Screen name={`tile/${unlitId}`} label="Picture without lamps" onSize={onSize} />
    </div>
    <p className="tile-note quiet">
      What moon and sky do alone{of === null ? '' : `, with camera and exposure of ${of}`}.
    </p>
  </article>
);
