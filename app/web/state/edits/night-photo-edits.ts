import type { Night, NightPhoto, Setup } from '../../../../core/setup/schema/setup.ts';
import type { PhotoSettings } from '../../../../core/testshot/photo-settings.ts';
import { nightId } from './night-edits.ts';
import { plainName } from './plain-name.ts';
import { type FramePlace, replaceById } from './within.ts';

/** Most of each that a setup keeps. */
const [mostNights, mostPhotos] = [60, 200];
const dayMilliseconds = 86_400_000;

/** What is asked of a photo for the log. */
export interface PhotoTaken {
  readonly fileName: string;
  readonly settings: PhotoSettings;
  readonly place: FramePlace;
  readonly passId: string | null;
  /** Its spot over the prediction, stops; null = not judged. */
  readonly overStops: number | null;
}

/** A photo as the log keeps it. */
export const nightPhotoOf = ({ fileName, settings, place, passId, overStops }: PhotoTaken): NightPhoto => ({
  name: plainName(fileName) || 'photo',
  at: settings.at,
  frameId: place.frameId,
  passId,
  aperture: settings.aperture,
  seconds: settings.seconds,
  iso: settings.iso,
  focalLengthMm: settings.focalLengthMm,
  overStops: overStops === null ? null : Number(Math.min(Math.max(overStops, -20), 20).toFixed(2)),
});

const timeOf = (localTime: string): number => Date.parse(`${localTime.length === 16 ? `${localTime}:00` : localTime}Z`);

/** The night that a photo belongs to: the latest of its scheme within a day of it, else the latest of its scheme. */
const nightOf = (nights: readonly Night[], schemeId: string, at: string | null): Night | undefined => {
  const own = nights
    .filter((night) => night.schemeId === schemeId)
    .toSorted((a, b) => timeOf(a.startedAt) - timeOf(b.startedAt));
  const near = own.filter(({ startedAt }) => Math.abs(timeOf(startedAt) - timeOf(at ?? '')) <= dayMilliseconds);
  return near.at(-1) ?? own.at(-1);
};

/** How long a pass was really on, by the log of the night within a day of a photo; null where nothing is written down. */
export const loggedCount = ({ nights }: Setup, schemeId: string, passId: string, at: string): number | null => {
  const night = nightOf(nights, schemeId, at);
  if (!night || Math.abs(timeOf(night.startedAt) - timeOf(at)) > dayMilliseconds) return null;
  return night.runs.findLast((run) => run.passId === passId)?.seconds ?? null;
};

/** The same photo looked at again is told anew, not twice; where there are too many the oldest make room. */
const withPhoto = (night: Night, photo: NightPhoto): Night => {
  const others = night.photos.filter(
    ({ name, at, frameId }) => name !== photo.name || at !== photo.at || frameId !== photo.frameId,
  );
  return { ...night, photos: [...others, photo].slice(-mostPhotos) };
};

/**
 * Writes down what a photo was taken with, in the night that it belongs to, or in a new one. A log that is full of other
 * nights stays as it is: the lamp is corrected all the same.
 *
 * @param now date and time on this machine's clock, for a photo that does not say its own
 */
export const logPhoto = (setup: Setup, schemeId: string, photo: NightPhoto, now: string): Setup => {
  const night = nightOf(setup.nights, schemeId, photo.at);
  if (night) return { ...setup, nights: replaceById(setup.nights, night.id, (it) => withPhoto(it, photo)) };
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme || setup.nights.length >= mostNights) return setup;
  const begun: Night = {
    id: nightId(setup),
    startedAt: photo.at ?? now,
    schemeId,
    schemeName: scheme.name,
    note: '',
    runs: [],
    photos: [photo],
  };
  return { ...setup, nights: [...setup.nights, begun] };
};
