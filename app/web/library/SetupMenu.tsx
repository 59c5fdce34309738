import { useRef } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { lessons, samples } from '../state/samples.ts';
import { openFile } from './open-file.ts';
import { saveFile } from './save-file.ts';

/** The setup's name; pressed, it offers the samples, a file to open, and the present setup to save. */
export const SetupMenu = () => {
  const setup = useSetup();
  const menu = useRef<HTMLDetailsElement>(null);
  const picker = useRef<HTMLInputElement>(null);
  const close = () => menu.current?.removeAttribute('open');
  const { open, tell } = useApp.getState();
  const openLesson = async ({ name, load }: (typeof lessons)[number]) => {
    close();
    try {
      open(await load());
    } catch {
      tell({
        tone: 'problem',
        text: `The lesson “${name}” could not be fetched. Try again with the network on. Your present setup is unchanged.`,
      });
    }
  };
  const save = () => {
    close();
    saveFile();
  };
  return (
    <details
      className="menu"
      ref={menu}
      onKeyDown={(event) => event.key === 'Escape' && close()}
      onBlur={(event) => {
        // a press elsewhere; one on the menu's own empty parts has no other target
        if (event.relatedTarget && !event.currentTarget.contains(event.relatedTarget)) close();
      }}
    >
      <summary>
        <strong>{setup.name}</strong>
      </summary>
      <div className="menu-list">
        {samples.map(({ id, name, load }) => (
          <button
            key={id}
            type="button"
            onClick={() => {
              close();
              open(load());
            }}
          >
            Sample: {name}
          </button>
        ))}
        <h3>Lessons</h3>
        {lessons.map((lesson) => (
          <button key={lesson.id} type="button" data-lesson={lesson.id} onClick={() => void openLesson(lesson)}>
            {lesson.name}
          </button>
        ))}
        <h3>Your own</h3>
        <button type="button" onClick={() => picker.current?.click()}>
          Open a file…
        </button>
        <button type="button" onClick={save}>
          Save as a file
        </button>
        <p className="quiet">{setup.note}</p>
        <input
          ref={picker}
          type="file"
          accept=".json,application/json"
          aria-label="Setup file"
          hidden
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            event.currentTarget.value = '';
            close();
            if (file) void openFile(file);
          }}
        />
      </div>
    </details>
  );
};
