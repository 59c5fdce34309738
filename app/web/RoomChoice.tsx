import { type Room, useSession } from './state/session.ts';
import { Icon, type IconName } from './ui/Icon.tsx';

const rooms: readonly (readonly [Room, string, string])[] = [
  ['viewfinder', 'Picture', 'One scheme, as large as can be'],
  ['compare', 'Compare', 'Schemes side by side'],
  ['sweep', 'Sweep', 'One lamp at many places'],
  ['card', 'Card', 'The page to take along'],
];

const icons = { viewfinder: 'picture', compare: 'compare', sweep: 'sweep', card: 'card' } as const satisfies Record<
  Room,
  IconName
>;

/** What fills the left of the page. */
export const RoomChoice = () => {
  const room = useSession((state) => state.room);
  // a lesson that asks for a shadow is not to be answered by a look elsewhere
  const isAsking = useSession((state) => state.hidesAnswer);
  const { set } = useSession.getState();
  return (
    <div className="choices rooms" role="group" aria-label="What is shown">
      {rooms.map(([id, name, title]) => (
        <button
          key={id}
          type="button"
          title={title}
          aria-pressed={room === id}
          disabled={isAsking && room !== id}
          onClick={() => set({ room: id })}
        >
          <Icon name={icons[id]} />
          {name}
        </button>
      ))}
    </div>
  );
};
