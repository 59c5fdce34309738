import type { RefObject } from 'react';

interface FilePickerProps {
  readonly label: string;
  /** Endings and media types, with commas between. */
  readonly accept: string;
  /** Pressed by what stands for it: `picker.current?.click()`. */
  readonly picker: RefObject<HTMLInputElement | null>;
  readonly onFile: (file: File) => void;
}

/** The browser’s own dialog for one file; the same file can be chosen twice. */
export const FilePicker = ({ label, accept, picker, onFile }: FilePickerProps) => (
  <input
    ref={picker}
    type="file"
    accept={accept}
    aria-label={label}
    hidden
    onChange={({ currentTarget }) => {
      const [file] = currentTarget.files ?? [];
      currentTarget.value = '';
      if (file) onFile(file);
    }}
  />
);
