import { useRef, useState } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { renameSetup } from '../state/edits/setup-edits.ts';
import { chooseLengths, useLengths } from '../state/lengths.ts';
import { openNightRun } from '../state/night-pages.ts';
import { useSaving } from '../state/page-saving.ts';
import { lessons, samples } from '../state/samples.ts';
import { useSession } from '../state/session.ts';
import { useSharing } from '../state/sharing.ts';
import { Choice } from '../ui/Choice.tsx';
import { Drop } from '../ui/Drop.tsx';
import { FilePicker } from '../ui/FilePicker.tsx';
import { late } from '../ui/late.tsx';
import { TextField } from '../ui/TextField.tsx';
import { KeptLine } from './KeptLine.tsx';
import { OfflineLine } from './OfflineLine.tsx';
import { openAnyFile, scanEndings } from './open-any-file.ts';
import { asSample, openNewest } from './open-newest.ts';
import { saveFile } from './save-file.ts';

export const OwnSetups = late(
  { name: 'The list of your own setups', meanwhile: <p className="quiet">Coming…</p> },
  async () => (await import('./OwnSetups.tsx')).OwnSetups,
);

/** What the page is, and whose work is in it. */
export const About = late(
  { name: 'What this page is', giveUp: () => useSession.getState().set({ showsAbout: false }) },
  async () => (await import('./About.tsx')).About,
);

const loadEmpty = async () => (await import('../state/empty-setup.ts')).emptySetup();

/** In what the page writes and reads lengths; the setup keeps metres. */
const LengthsChoice = () => {
  const lengths = useLengths((state) => state.lengths);
  return (
    <Choice
      label="Lengths on this machine"
      value={lengths}
      options={[
        ['metres', 'metres'],
        ['feet', 'feet'],
      ]}
      onChange={(to) => chooseLengths(to === 'feet' ? 'feet' : 'metres')}
    />
  );
};

/** The setup's name; pressed, it offers the user's own setups, the samples, a file to open, and the present setup to save. */
export const SetupMenu = () => {
  const setup = useSetup();
  const isKept = useSaving((state) => state.problem === null);
  const picker = useRef<HTMLInputElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const showsAbout = useSession((state) => state.showsAbout);
  const { edit, tell } = useApp.getState();
  const openAny = async (name: string, ...what: Parameters<typeof openNewest>) => {
    try {
      await openNewest(...what);
    } catch {
      tell({
        tone: 'problem',
        text: `“${name}” could not be fetched. Try again with the network on. Your present setup is unchanged.`,
      });
    }
  };
  const label = (
    <>
      <strong>{setup.name}</strong>
      {!isKept && <span className="not-kept"> · not kept</span>}
    </>
  );
  const menu = (
    <Drop className="menu" listClass="menu-list" label={label} onToggle={setIsOpen}>
      {(close) => {
        const closing = (act: () => void) => () => {
          act();
          close();
        };
        return (
          <>
            {setup.note && <p className="quiet">{setup.note}</p>}
            <TextField
              label="Name of this setup"
              value={setup.name}
              onChange={(name) => edit((s) => renameSetup(s, name))}
            />
            <KeptLine />
            <OfflineLine />
            <LengthsChoice />
            <button type="button" onClick={closing(() => void openAny('New setup', loadEmpty))}>
              New setup, an empty place
            </button>
            <button type="button" onClick={closing(() => picker.current?.click())}>
              Open a file…
            </button>
            <button type="button" onClick={closing(saveFile)}>
              Save as a file
            </button>
            <button type="button" onClick={closing(() => useSharing.setState({ isOpen: true }))}>
              Share by link…
            </button>
            <button type="button" onClick={closing(() => openNightRun('.menu > summary'))}>
              Run it tonight, and the log of nights
            </button>
            <h3>Your own</h3>
            {isOpen && <OwnSetups close={close} />}
            {(
              [
                ['Samples', 'sample', samples],
                ['Lessons', 'lesson', lessons],
              ] as const
            ).map(([heading, kind, list]) => (
              <div key={kind} className="menu-group">
                <h3>{heading}</h3>
                {list.map((kept) => (
                  <button
                    key={kept.id}
                    type="button"
                    {...{ [`data-${kind}`]: kept.id }}
                    onClick={closing(() => void openAny(kept.name, kept.load, asSample(kept.id)))}
                  >
                    {kept.name}
                  </button>
                ))}
              </div>
            ))}
            <button
              type="button"
              className="quiet"
              onClick={closing(() => useSession.getState().set({ showsAbout: true }))}
            >
              About, changes, licences
            </button>
            <FilePicker
              label="Setup file"
              accept={['.json', 'application/json', ...scanEndings].join()}
              picker={picker}
              onFile={openAnyFile}
            />
          </>
        );
      }}
    </Drop>
  );
  return (
    <>
      {menu}
      {showsAbout && <About />}
    </>
  );
};
