import { type ComponentType, createElement, type ReactNode, useEffect, useState } from 'react';
import { Notice } from './Notice.tsx';

interface LateOptions {
  /** What it is, to be said when it does not come: “The bag”. */
  readonly name: string;
  /** What stands in its place until it comes; nothing when left out. */
  readonly meanwhile?: ReactNode;
  /** For what lies over the page: takes back the wish for it when it does not come. */
  readonly giveUp?: () => void;
}

/** A file that holds a part of the page: fetched once, and asked for again after it did not come. */
class PartFile<Props> {
  part: ComponentType<Props> | null = null;
  private readonly load: () => Promise<ComponentType<Props>>;
  private coming: Promise<void> | null = null;

  constructor(load: () => Promise<ComponentType<Props>>) {
    this.load = load;
  }

  fetch(): Promise<void> {
    this.coming ??= this.load().then(
      (part) => {
        this.part = part;
      },
      (error: unknown) => {
        this.coming = null;
        throw error;
      },
    );
    return this.coming;
  }
}

interface PlaceOfPartProps<Props> extends LateOptions {
  readonly file: PartFile<Props>;
  readonly props: Props;
}

const PlaceOfPart = <Props extends object>(all: PlaceOfPartProps<Props>) => {
  const { file, props, name, meanwhile = null, giveUp } = all;
  const [hasFailed, setHasFailed] = useState(false);
  const [, setIsThere] = useState(file.part !== null);
  useEffect(() => {
    if (file.part || hasFailed) return;
    let isGone = false;
    file.fetch().then(
      () => isGone || setIsThere(true),
      () => isGone || setHasFailed(true),
    );
    return () => {
      isGone = true;
    };
  }, [file, hasFailed]);
  if (file.part) return createElement(file.part, props);
  if (!hasFailed) return meanwhile;
  const text = `${name} could not be loaded. Your setup is unchanged.`;
  const again = { label: 'Try again', onPress: () => setHasFailed(false) };
  if (giveUp) return <Notice tone="problem" text={text} actions={[again]} onClose={giveUp} />;
  return (
    <p className="quiet" role="alert">
      {text}{' '}
      <button type="button" className="small" onClick={again.onPress}>
        {again.label}
      </button>
    </p>
  );
};

/** A part of the page in a file of its own; `fetch` has the file come before it is wanted, and fails when it does not. */
export type Late<Props> = ComponentType<Props> & { readonly fetch: () => Promise<void> };

/**
 * A part of the page that is loaded when it is first drawn, or fetched before: then it is there at once. When its file can’t
 * be loaded it says so and offers to try again; nothing else on the page changes.
 */
export const late = <Props extends object>(
  options: LateOptions,
  load: () => Promise<ComponentType<Props>>,
): Late<Props> => {
  const file = new PartFile(load);
  return Object.assign((props: Props) => <PlaceOfPart {...options} file={file} props={props} />, {
    fetch: () => file.fetch(),
  });
};
