import { useApp, useSetup } from '../state/app-store.ts';
import { Slip } from '../ui/Slip.tsx';
import { darknessWord } from '../ui/sky-words.ts';
import { shortCoordinates } from './coordinates-text.ts';
import { PlaceFields } from './late-parts.ts';

/** Where the scene lies and how dark it is there, as a strip that opens. */
export const PlaceSlip = () => {
  const { place } = useSetup();
  const isOpen = useApp(({ selection }) => selection?.kind === 'place');
  const { select } = useApp.getState();
  const sky = place.sky ? darknessWord(place.sky.zenithMagnitude) : 'plain sky';
  const head = (
    <>
      <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
        <path d="M1 11H13M2.5 11A4.5 4.5 0 0 1 11.5 11M7 1V4M1.5 4L3.5 6M12.5 4L10.5 6" />
      </svg>
      <strong>Place</strong>
      <span>
        {shortCoordinates(place)} · {sky}
      </span>
    </>
  );
  return (
    <section className="slips place" id="place" aria-label="Place">
      <ul>
        <Slip head={head} isOpen={isOpen} onToggle={() => select(isOpen ? null : { kind: 'place' })}>
          <PlaceFields />
        </Slip>
      </ul>
    </section>
  );
};
