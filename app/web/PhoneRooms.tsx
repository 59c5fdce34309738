import { goToStart } from './start-of-room.ts';
import { useReport } from './state/reports.ts';
import { type PhoneRoom, useSession } from './state/session.ts';
import { Icon } from './ui/Icon.tsx';

/** What a phone shows under the picture, one at a time. */
const rooms = [
  ['plan', 'Plan'],
  ['lamps', 'Lamps'],
  ['subjects', 'Subjects'],
  ['exposure', 'Exposure'],
  ['time', 'Time'],
  ['notes', 'Cautions'],
] as const satisfies readonly (readonly [PhoneRoom, string])[];

/** The bar at a phone’s lower edge. */
export const PhoneRooms = () => {
  const room = useSession((state) => state.phoneRoom);
  const cautionCount = useReport()?.cautions.length ?? 0;
  const countOf = (id: PhoneRoom) => (id === 'notes' ? cautionCount : 0);
  return (
    <nav className="switch" aria-label="Rooms">
      {rooms.map(([id, name]) => (
        <button
          key={id}
          type="button"
          aria-pressed={room === id}
          onClick={() => {
            useSession.getState().set({ phoneRoom: id });
            requestAnimationFrame(() => goToStart(id));
          }}
        >
          <span>
            <Icon name={id} />
            {countOf(id) > 0 && (
              <b className="switch-count" aria-hidden="true">
                {countOf(id)}
              </b>
            )}
          </span>
          {name}
          {countOf(id) > 0 && <span className="unseen"> · {countOf(id)}</span>}
        </button>
      ))}
    </nav>
  );
};
