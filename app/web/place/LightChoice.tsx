import { takeHourSky, takePlainSky } from './light-switch.ts';

/** Whether the picture has the sky of its hour, or plain light that is stated. */
export const LightChoice = ({ isPlain }: { isPlain: boolean }) => (
  <div className="choices" role="group" aria-label="Light without lamps">
    <button type="button" aria-pressed={!isPlain} onClick={takeHourSky}>
      Sky of that hour
    </button>
    <button type="button" aria-pressed={isPlain} onClick={takePlainSky}>
      Plain sky
    </button>
  </div>
);
