import { useRef } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { renameSetup } from '../state/edits/setup-edits.ts';
import { emptySetup } from '../state/empty-setup.ts';
import { type Kept, lessons, samples } from '../state/samples.ts';
import { useSharing } from '../state/sharing.ts';
import { Drop } from '../ui/Drop.tsx';
import { TextField } from '../ui/TextField.tsx';
import { OfflineLine } from './OfflineLine.tsx';
import { openAnyFile, scanEndings } from './open-any-file.ts';
import { openNewest } from './open-newest.ts';
import { saveFile } from './save-file.ts';

/** The setup's name; pressed, it offers the samples, a file to open, and the present setup to save. */
export const SetupMenu = () => {
  const setup = useSetup();
  const picker = useRef<HTMLInputElement>(null);
  const { edit, tell } = useApp.getState();
  const openKept = async ({ name, load }: Kept) => {
    try {
      await openNewest(load);
    } catch {
      tell({
        tone: 'problem',
        text: `“${name}” could not be fetched. Try again with the network on. Your present setup is unchanged.`,
      });
    }
  };
  return (
    <Drop className="menu" listClass="menu-list" label={<strong>{setup.name}</strong>} closesOnPress>
      {setup.note && <p className="quiet">{setup.note}</p>}
      <h3>Samples</h3>
      {samples.map((sample) => (
        <button key={sample.id} type="button" data-sample={sample.id} onClick={() => void openKept(sample)}>
          {sample.name}
        </button>
      ))}
      <h3>Lessons</h3>
      {lessons.map((lesson) => (
        <button key={lesson.id} type="button" data-lesson={lesson.id} onClick={() => void openKept(lesson)}>
          {lesson.name}
        </button>
      ))}
      <h3>Your own</h3>
      <TextField label="Name of this setup" value={setup.name} onChange={(name) => edit((s) => renameSetup(s, name))} />
      <button type="button" onClick={() => void openNewest(emptySetup)}>
        New setup, an empty place
      </button>
      <button type="button" onClick={() => picker.current?.click()}>
        Open a file…
      </button>
      <button type="button" onClick={saveFile}>
        Save as a file
      </button>
      <button type="button" onClick={() => useSharing.setState({ isOpen: true })}>
        Share by link…
      </button>
      <input
        ref={picker}
        type="file"
        accept={['.json', 'application/json', ...scanEndings].join()}
        aria-label="Setup file"
        hidden
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file) openAnyFile(file);
        }}
      />
      <OfflineLine />
    </Drop>
  );
};
