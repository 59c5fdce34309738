import { useScheme, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { LightChoice } from './LightChoice.tsx';
import { NorthFields } from './NorthFields.tsx';
import { PlainFields } from './PlainFields.tsx';
import { SkyFields } from './SkyFields.tsx';
import { Towns } from './Towns.tsx';
import { WhereFields } from './WhereFields.tsx';

/** What the place's strip holds: where, which way north lies, and what is in the sky. */
export const PlaceFields = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const { place } = setup;
  const camera = cameraOf(setup, scheme.id);
  return (
    <>
      <WhereFields place={place} />
      <NorthFields place={place} camera={camera} />
      <LightChoice isPlain={place.sky === null} />
      {place.sky ? <SkyFields place={place} sky={place.sky} /> : <PlainFields place={place} />}
      <Towns camera={camera} />
      <p className="quiet">
        Rules about darkness and about lighting differ from place to place, and may forbid lamps. Ask locally before you
        go.
      </p>
    </>
  );
};
